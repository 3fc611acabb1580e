package tiewright.http.visit;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.function.Function;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.wording.Words;

/** What an address names, as far as the event has it; what it has not is a page that is not there. */
record Address(Context ctx, VisibleEvent event) {
    Tie tie() {
        return id("tie", TieId::of)
                .flatMap(event::tie)
                .orElseThrow(() ->
                        new NotFound(Words.say(event, "page-visit.there-is-no-tie", "tie", ctx.pathParam("tie"))));
    }

    RubberNo rubber() {
        return RubberNo.parse(ctx.pathParam("rubber"))
                .filter(rubber -> rubber.isDecider()
                        || rubber.number() <= event.conditions().rubbers())
                .orElseThrow(() -> new NotFound(
                        Words.say(event, "page-visit.a-tie-has-no-rubber", "rubber", ctx.pathParam("rubber"))));
    }

    /** Empty if the address has something there that cannot be an id. */
    <T> Optional<T> id(String name, Function<String, T> reader) {
        try {
            return Optional.of(reader.apply(ctx.pathParam(name)));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }
}
