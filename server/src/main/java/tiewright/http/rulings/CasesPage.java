package tiewright.http.rulings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.correction.RulingNeeded;
import tiewright.desk.RuleOnCase;
import tiewright.desk.SayTwoPeople;
import tiewright.event.Penalty;
import tiewright.event.PlayerId;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieScore;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.DisputeAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.Option;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** Sheets that were not as they should be, each with the published consequences; only a ruling applies one. */
final class CasesPage implements Page {
    private static final String HERE = "/organiser/cases";
    private static final String ENTRIES = "/organiser/clubs";

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.OFFICIALS, Addresses.TWO_PEOPLE, CasesPage::twoPeople);
        routes.post(Door.OFFICIALS, HERE, CasesPage::rule);
    }

    private static void rule(Visit visit) {
        Form form = visit.form();
        String name = form.text(Fields.FORM);
        Optional<RulingNeeded.Case> one = form.must(
                "penalty",
                visit.ask(DisputeAnswers::new).cases().stream()
                        .filter(each -> name(each).equals(name))
                        .findFirst());
        Optional<Penalty> penalty = form.must("penalty", form.maybe("penalty").flatMap(Penalty::parse));
        String reason = form.mustText("reason");
        String by = form.mustText("by");
        visit.attempt(
                form,
                () -> new RuleOnCase(
                        one.orElseThrow().kind().code(),
                        one.get().tie(),
                        one.get().club(),
                        penalty.orElseThrow(),
                        reason,
                        by),
                HERE,
                tried -> screen(visit, tried));
    }

    /** From the cases, or from the entries: one answer for both. */
    private static void twoPeople(Visit visit) {
        Form form = visit.form();
        Optional<PlayerId> one = form.must("one", form.read("one", "form.not-a-player", PlayerId::of));
        Optional<PlayerId> other = form.must("other", form.read("other", "form.not-a-player", PlayerId::of));
        visit.attempt(
                form,
                () -> new SayTwoPeople(one.orElseThrow(), other.orElseThrow()),
                form.text("back").equals(ENTRIES) ? ENTRIES : HERE,
                tried -> screen(visit, tried));
    }

    private static List<WorkView.Section> namesakes(Visit visit, RulingNeeded.Case one) {
        List<WorkView.Section> sections = new ArrayList<>();
        visit.ask(DisputeAnswers::new)
                .namesakes(one)
                .forEach(
                        (player, others) -> others.forEach(other -> sections.add(namesake(visit, one, player, other))));
        return sections;
    }

    private static WorkView.Section namesake(Visit visit, RulingNeeded.Case one, PlayerId player, PlayerId other) {
        String name = "two-" + name(one) + "-" + AtFields.safe(other.code());
        return WorkView.Section.of(name, "", oneName(visit, one, player, other))
                .with(new WorkView.WorkForm(
                        name,
                        Addresses.TWO_PEOPLE,
                        List.of(
                                new HiddenField("one", player.code()),
                                new HiddenField("other", other.code()),
                                new HiddenField("back", HERE)),
                        List.of(Button.other(visit.say("page-rulings.they-are-two-people")))));
    }

    private static String oneName(Visit visit, RulingNeeded.Case one, PlayerId player, PlayerId other) {
        VisibleEvent event = visit.event();
        return visit.say(
                "page-rulings.one-name-in-two-squads",
                "player",
                event.name(player),
                "club",
                event.clubName(one.club()),
                "other",
                event.name(other),
                "otherClub",
                event.player(other).map(known -> event.clubName(known.club())).orElse(""));
    }

    private static String name(RulingNeeded.Case one) {
        return one.kind().code() + "-" + AtFields.safe(one.tie().code()) + "-"
                + AtFields.safe(one.club().code());
    }

    private static Screen screen(Visit visit, Tried tried) {
        List<WorkView.Section> sections = new ArrayList<>();
        visit.ask(DisputeAnswers::new).cases().forEach(one -> {
            sections.addAll(namesakes(visit, one));
            sections.add(section(visit, one, tried));
        });
        if (sections.isEmpty()) {
            sections.add(WorkView.Section.of("none", "", visit.say("page-rulings.nothing-is-found-wrong-with")));
        }
        return Screen.of(
                "work",
                visit.say("page-rulings.rulings-needed"),
                new WorkView(
                        tried.refusal(),
                        BackLinks.home(visit),
                        List.of(visit.say("page-rulings.found-after-the-sheets-were")),
                        sections));
    }

    private static WorkView.Section section(Visit visit, RulingNeeded.Case one, Tried tried) {
        Tie tie = visit.event().tie(one.tie()).orElseThrow();
        TieViews views = new TieViews(visit.event());
        String players = one.players().stream().map(visit.event()::name).collect(Collectors.joining(", "));
        Words words = visit.words();
        String rubbers =
                one.rubbers().stream().map(no -> TieViews.rubber(words, no)).collect(Collectors.joining(", "));
        String name = name(one);
        Fields fields = Fields.of(name, tried);
        List<Option> options = List.of(Penalty.values()).stream()
                .map(penalty -> option(visit, views, tie, one, penalty))
                .toList();
        return WorkView.Section.of(
                        name,
                        views.title(tie) + ": "
                                + words.sentence("correction.case." + one.kind().code(), java.util.Map.of()),
                        visit.event().clubName(one.club()) + ", " + rubbers
                                + (players.isEmpty() ? "." : ": " + players + "."))
                .with(new WorkView.WorkForm(
                        name,
                        HERE,
                        asked(visit, one, fields, options),
                        List.of(Button.main(visit.say("page-rulings.give-this-ruling")))));
    }

    private static List<FormField> asked(Visit visit, RulingNeeded.Case one, Fields fields, List<Option> options) {
        return List.of(
                new HiddenField("of", one.tie().code()),
                fields.oneOf("penalty", visit.say("page-rulings.what-follows"), "", options),
                fields.line("reason", visit.say("page-rulings.the-reason-with-the-number"), "")
                        .withMaxLength(300)
                        .mustBeFilled(),
                fields.line("by", visit.say("page-rulings.who-rules-by-name"), "")
                        .withAutocomplete("name")
                        .mustBeFilled());
    }

    private static Option option(Visit visit, TieViews views, Tie tie, RulingNeeded.Case one, Penalty penalty) {
        TieScore after = visit.ask(DisputeAnswers::new).after(one, penalty);
        String score = visit.say(
                "page-rulings.the-tie-then-stands",
                "score",
                after.rubbersWon(Side.HOME) + "-" + after.rubbersWon(Side.AWAY),
                "end",
                after.winner().isPresent() ? "won" : after.finished() ? "drawn" : "open",
                "club",
                after.winner().map(side -> views.side(tie, side)).orElse(""));
        String announced = visit.ask(DisputeAnswers::new)
                        .announced(one)
                        .filter(penalty::equals)
                        .isPresent()
                ? " " + visit.say("page-rulings.as-the-conditions-announce")
                : "";
        String what =
                switch (penalty) {
                    case NONE -> visit.say("page-rulings.the-sheet-stands");
                    case RUBBERS -> visit.say("page-rulings.the-rubbers-concerned-are-lost");
                    case TIE -> visit.say("page-rulings.the-whole-tie-is-lost");
                };
        return new Option(penalty.code(), what, score + announced, false, false);
    }
}
