package tiewright.wording;

import java.util.List;
import java.util.function.Function;
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
    private final Text text = Text.of("standings");
    private final Function<ClubId, String> name;

    /** @param name how a club is called in the sentence */
    public NeedsWords(Function<ClubId, String> name) {
        this.name = name;
    }

    public static NeedsWords withCodes() {
        return new NeedsWords(ClubId::code);
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
                .map(p -> text.say("needs.through." + p, places))
                .orElse(plain(report.places(), places));
        return report.tooMany()
                ? prospect + text.plain("lines") + text.say("needs.too-many", report.tiesLeft())
                : prospect;
    }

    private String plain(PlaceRange range, String places) {
        return text.say(range.isCertain() ? "needs.settled" : "needs.all", places);
    }

    /** One case, such as <em>if it beats C: place 1, through whatever else happens</em>. */
    public String statement(NeedsCase one) {
        String places = places(one.places(), one.exact(), one.mayNeedLot());
        String prospect =
                one.prospect().map(p -> text.say("needs.through." + p, places)).orElse(places);
        String helped = helped(helped(prospect, one, Prospect.THROUGH), one, Prospect.OUT);
        if (one.results().isEmpty()) {
            return text.say("needs.no-tie-left", helped);
        }
        return text.say(
                "needs.if", text.enumerate(one.results().stream().map(this::own).toList(), "and"), helped);
    }

    private String places(PlaceRange range, boolean exact, boolean lot) {
        String places = text.say(range.isCertain() ? "needs.places.one" : "needs.places.range", range);
        String bound = exact || range.isCertain() ? places : text.say("needs.bound", places);
        return lot ? text.say("needs.lot", bound) : bound;
    }

    private String own(OwnResult result) {
        return text.say("needs.own." + result.result(), name.apply(result.opponent()));
    }

    private String helped(String before, NeedsCase one, Prospect prospect) {
        List<String> helps = one.helps().stream()
                .filter(help -> help.prospect() == prospect)
                .map(this::help)
                .toList();
        return helps.isEmpty() ? before : text.say("needs.help." + prospect, before, text.enumerate(helps, "needs.or"));
    }

    private String help(Help help) {
        if (help.winner().isEmpty()) {
            return text.say("needs.help.drawn", name.apply(help.home()), name.apply(help.away()));
        }
        ClubId winner = help.winner().get();
        ClubId loser = winner.equals(help.home()) ? help.away() : help.home();
        return text.say("needs.help.beat", name.apply(winner), name.apply(loser));
    }
}
