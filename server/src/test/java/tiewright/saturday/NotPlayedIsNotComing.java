package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.Tie;

/** A tie that will not be played stands in no list of what is to come; the table says in words what became of the club. */
final class NotPlayedIsNotComing implements Promise {
    private static final String COMING =
            "#do-next li, section.now[data-deadline], #next article, #next div.row:has(.detail), #now > div + div .court-row";

    @Override
    public List<Broken> broken(Moment moment) {
        List<Broken> broken = new ArrayList<>();
        List<Tie> off = moment.event().ties().values().stream()
                .filter(tie -> moment.event().withdrawals().keySet().stream().anyMatch(tie::has))
                .filter(tie ->
                        !moment.event().progress(tie).finished() || tie.cards().isEmpty())
                .toList();
        if (!off.isEmpty()) {
            moment.met(Looked.TIE_OFF);
        }
        List<Sight> fresh = moment.fresh();
        for (Sight sight : fresh) {
            for (Tie tie : off) {
                sight.page().select(COMING).stream()
                        .filter(line -> names(moment, line.outerHtml(), line.text(), tie))
                        .forEach(line -> broken.add(new Broken(
                                12, sight + ": tie " + tie.id() + " will not be played: \"" + line.text() + "\"")));
            }
        }
        if (!moment.event().withdrawals().isEmpty()) {
            fresh.stream()
                    .filter(sight ->
                            sight.path().equals("/tables") && !sight.text().contains("withdr"))
                    .forEach(sight -> broken.add(new Broken(12, "the tables do not say that a club withdrew")));
        }
        return broken;
    }

    private static boolean names(Moment moment, String html, String text, Tie tie) {
        String home = name(moment, tie, tiewright.event.Side.HOME);
        String away = name(moment, tie, tiewright.event.Side.AWAY);
        return html.contains("/" + tie.id() + "\"") || text.contains(home + " v " + away);
    }

    private static String name(Moment moment, Tie tie, tiewright.event.Side side) {
        return tie.club(side)
                .flatMap(club -> moment.event().club(club))
                .map(club -> club.name())
                .orElse("nobody");
    }
}
