package tiewright.cli;

import java.util.stream.Collectors;
import tiewright.event.ClubId;
import tiewright.event.Pair;
import tiewright.event.Sheet;
import tiewright.event.TieId;

/** A sheet that no desk has: what a captain's phone keeps of it, names and secret. */
record DemoPhone(ClubId club, TieId tie, String secret, Sheet sheet) {
    /** The page of the sheet; what follows the # stays in the browser, which takes it for what its phone keeps. */
    String path() {
        return "/captain/sheet/" + tie + "#secret=" + secret + "&"
                + sheet.pairs().entrySet().stream()
                        .flatMap(one -> one.getValue().stream()
                                .map(pair -> fields(one.getKey().toString(), pair)))
                        .collect(Collectors.joining("&"));
    }

    private static String fields(String rubber, Pair pair) {
        return "sheet-" + rubber + "-first=" + pair.first() + "&sheet-" + rubber + "-second=" + pair.second();
    }
}
