package tiewright.wording;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.standings.Help;
import tiewright.standings.NeedsCase;
import tiewright.standings.NeedsReport;
import tiewright.standings.OwnResult;
import tiewright.standings.PlaceRange;
import tiewright.standings.Prospect;

/** What a club needs, one sentence for each case. */
public final class NeedsWords {
    private final Words words;

    /** @param words call a club by its name on a page, by its code in a file */
    public NeedsWords(Words words) {
        this.words = words;
    }

    public static NeedsWords withCodes() {
        return new NeedsWords(Words.ofCodes(ZoneOffset.UTC));
    }

    /** The whole range first, then a sentence for each case. */
    public List<String> all(NeedsReport report) {
        return Stream.concat(Stream.of(overall(report)), report.cases().stream().map(this::statement))
                .toList();
    }

    /** Over everything that can still happen. */
    public String overall(NeedsReport report) {
        String places = places(report.places(), report.exact(), report.mayNeedLot());
        String prospect = report.prospect()
                .map(p -> say("through." + p, "places", places))
                .orElse(plain(report.places(), places));
        List<String> said = new ArrayList<>(List.of(prospect));
        if (report.tooMany()) {
            said.add(say("too-many", "ties", report.tiesLeft()));
        }
        if (report.onlyEnds()) {
            said.add(say("only-ends", "ties", report.cases().get(0).results().size()));
        }
        return words.list(said, "lines");
    }

    private String plain(PlaceRange range, String places) {
        return say(range.isCertain() ? "settled" : "all", "places", places);
    }

    /** One case, such as <em>if it beats C: place 1, through whatever else happens</em>. */
    public String statement(NeedsCase one) {
        String places = places(one.places(), one.exact(), one.mayNeedLot());
        String prospect =
                one.prospect().map(p -> say("through." + p, "places", places)).orElse(places);
        String helped = helped(helped(prospect, one, Prospect.THROUGH), one, Prospect.OUT);
        if (one.results().isEmpty()) {
            return say("no-tie-left", "then", helped);
        }
        return say("if", "results", one.results().stream().map(this::own).toList(), "then", helped);
    }

    private String places(PlaceRange range, boolean exact, boolean lot) {
        String places = say(range.isCertain() ? "places.one" : "places.range", "places", range);
        String bound = exact || range.isCertain() ? places : say("bound", "places", places);
        return lot ? say("lot", "places", bound) : bound;
    }

    private String own(OwnResult result) {
        return say("own." + result.result(), "club", result.opponent());
    }

    private String helped(String before, NeedsCase one, Prospect prospect) {
        List<String> helps = one.helps().stream()
                .filter(help -> help.prospect() == prospect)
                .map(this::help)
                .toList();
        return helps.isEmpty() ? before : say("help." + prospect, "before", before, "helps", helps);
    }

    private String help(Help help) {
        if (help.winner().isEmpty()) {
            return say("help.drawn", "home", help.home(), "away", help.away());
        }
        ClubId winner = help.winner().get();
        ClubId loser = winner.equals(help.home()) ? help.away() : help.home();
        return say("help.beat", "winner", winner, "loser", loser);
    }

    private String say(String key, Object... namesAndValues) {
        return words.say("standings.needs." + key, namesAndValues);
    }
}
