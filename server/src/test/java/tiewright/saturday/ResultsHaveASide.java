package tiewright.saturday;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A result on a player's page is said from that player's side, with won or lost in words. */
final class ResultsHaveASide implements Promise {
    private static final Pattern SCORE = Pattern.compile("\\b\\d{1,2}-\\d{1,2}\\b");

    @Override
    public List<Broken> broken(Moment moment) {
        return moment.sights().stream()
                .filter(sight -> sight.isRead() && sight.path().matches("/player/[^/]+"))
                .flatMap(sight -> silent(moment, sight))
                .toList();
    }

    private static Stream<Broken> silent(Moment moment, Sight sight) {
        return sight.page().select("main li, main div.row:not(:has(.detail))").stream()
                .map(line -> line.text())
                .filter(line -> SCORE.matcher(line).find())
                .peek(line -> moment.met(Looked.RESULT_OF_A_PLAYER))
                .filter(line -> !line.matches("(?is).*\\b(won|lost|void|walkover)\\b.*"))
                .map(line -> new Broken(17, sight + " says \"" + line + "\" and not who won"));
    }
}
