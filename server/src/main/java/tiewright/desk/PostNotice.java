package tiewright.desk;

import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;
import tiewright.event.TieId;

/**
 * Everybody is told something, under the next number.
 *
 * @param before what was said until now and no longer holds; then a reason is needed
 */
public record PostNotice(
        String text, Optional<TieId> tie, Optional<String> before, Optional<String> after, String reason)
        implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Asked asked = Asked.byOfficial(given)
                .text("text", text, Asked.LONG)
                .notTooLong("before", before.orElse(""), Asked.SHORT)
                .notTooLong("after", after.orElse(""), Asked.SHORT);
        if (before.isPresent()) {
            asked.text("reason", reason, Asked.LONG);
        } else {
            asked.notTooLong("reason", reason, Asked.LONG);
        }
        tie.filter(id -> event.tie(id).isEmpty())
                .ifPresent(id -> asked.unless(
                        false, Refusal.of("desk.no-such-tie").with("tie", id).at("tie")));
        return asked.isFine()
                ? Accepted.of(new OfficialFact.NoticePosted(
                        Numbers.notice(event),
                        text.strip(),
                        tie,
                        before.map(String::strip),
                        after.map(String::strip),
                        reason.strip()))
                : asked.refused();
    }
}
