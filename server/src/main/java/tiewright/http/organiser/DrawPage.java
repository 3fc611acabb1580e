package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tiewright.conditions.DrawSeparation;
import tiewright.draw.DrawStep;
import tiewright.draw.Entrant;
import tiewright.draw.Pool;
import tiewright.draw.PoolDraw;
import tiewright.draw.PoolDrawResult;
import tiewright.event.ClubId;
import tiewright.event.DrawFact;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.WorkView;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.setup.DrawPools;
import tiewright.wording.Words;

/** The draw of the pools, from words spoken in public, and how anybody can draw it again. */
final class DrawPage implements Page {
    private static final String HERE = "/organiser/draw";
    private static final String FORM = "draw";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.ORGANISER, HERE, DrawPage::draw);
    }

    private static void draw(Visit visit) {
        Form form = visit.form();
        OptionalInt pools = form.mustNumber("pools");
        String seed = form.mustText("spokenSeed");
        String witness = form.mustText("witness");
        if (hasPools(visit.event())) {
            form.mustText("again");
        }
        visit.attempt(
                form, () -> new DrawPools(pools.orElseThrow(), seed, witness), HERE, tried -> screen(visit, tried));
    }

    /** Drawn here, or come with the plain files of the event. */
    private static boolean hasPools(VisibleEvent event) {
        return !event.pools().isEmpty();
    }

    private static Screen screen(Visit visit, Tried tried) {
        VisibleEvent event = visit.event();
        boolean drawn = hasPools(event);
        List<WorkView.Section> sections = new ArrayList<>();
        event.draw().ifPresentOrElse(one -> sections.addAll(result(event, one)), () -> {
            if (drawn) {
                sections.add(WorkView.Section.of("result", "", visit.say("page-organiser.pools-came-with-files"))
                        .with(pools(event, event.pools())));
            }
        });
        WorkView.Section form = form(visit, tried, drawn);
        sections.add(drawn && tried.isNothing() ? form.folded(visit.say("page-organiser.draw-again")) : form);
        List<String> intro = drawn
                ? List.of()
                : List.of(
                        visit.say("page-organiser.draw-first"),
                        visit.say("page-organiser.draw-then"),
                        visit.say("page-organiser.draw-so"));
        return Screen.of(
                "work",
                visit.say("page-organiser.draw-of-the-pools"),
                new WorkView(tried.refusal(), BackLinks.toOrganiser(visit.words()), intro, sections));
    }

    private static WorkView.Section form(Visit visit, Tried tried, boolean drawn) {
        Words words = visit.words();
        Fields fields = Fields.of(FORM, tried);
        List<FormField> asked = new ArrayList<>(
                List.of(pools(visit, fields), seed(visit.words(), fields), witness(visit.words(), fields)));
        if (drawn) {
            asked.add(fields.tick(
                    "again",
                    words.say("page-organiser.the-pools-are-drawn-already"),
                    words.say("page-organiser.draw-again-the-draw-above"),
                    false));
        }
        Button press = drawn
                ? Button.stop(words.say("page-organiser.draw-again-with-these-words"))
                : Button.main(words.say("page-organiser.draw-with-these-words"));
        return WorkView.Section.of(FORM, drawn ? "" : words.say("page-organiser.draw-the-pools"))
                .with(new WorkView.WorkForm(FORM, HERE, asked, List.of(press)));
    }

    private static FormField pools(Visit visit, Fields fields) {
        int clubs = visit.event().clubs().size();
        return fields.number("pools", visit.say("page-organiser.number-of-pools"), OptionalInt.empty())
                .withHint(visit.say("page-organiser.are-entered", "clubs", clubs))
                .mustBeFilled();
    }

    static FormField seed(Words words, Fields fields) {
        return fields.line("spokenSeed", words.say("page-organiser.words-spoken-in-public"), "")
                .withMaxLength(200)
                .withHint(words.say("page-organiser.words-spoken-hint"))
                .mustBeFilled();
    }

    static FormField witness(Words words, Fields fields) {
        return fields.line("witness", words.say("page-organiser.who-spoke-or-witnessed"), "")
                .withMaxLength(100)
                .mustBeFilled();
    }

    /** The pools side by side, as they hang on the wall. */
    private static List<WorkView.Section> result(VisibleEvent event, DrawFact.PoolsDrawn drawn) {
        Words words = Words.of(event);
        String from = words.say(
                "page-organiser.drawn-from-the-words-witness",
                "spokenSeed",
                drawn.spokenSeed(),
                "witness",
                drawn.witness());
        return List.of(
                WorkView.Section.of("result", "", from).with(pools(event, drawn.pools())),
                replay(event, drawn).folded(words.say("page-organiser.how-to-draw-it-again")));
    }

    private static ReasonTable pools(VisibleEvent event, Map<String, List<ClubId>> pools) {
        Words words = Words.of(event);
        List<ReasonTable.Column> columns = new ArrayList<>();
        columns.add(new ReasonTable.Column(words.say("page-organiser.number"), false));
        pools.keySet()
                .forEach(pool -> columns.add(
                        new ReasonTable.Column(words.say("page-organiser.pool-named", "pool", pool), false)));
        int longest = pools.values().stream().mapToInt(List::size).max().orElse(0);
        List<ReasonTable.Row> rows = IntStream.rangeClosed(1, longest)
                .mapToObj(number -> row(event, pools, number))
                .toList();
        return new ReasonTable("drawn", words.say("page-organiser.the-pools"), columns, rows, "");
    }

    private static ReasonTable.Row row(VisibleEvent event, Map<String, List<ClubId>> pools, int number) {
        List<ReasonTable.Cell> cells = new ArrayList<>(List.of(ReasonTable.Cell.of(Integer.toString(number))));
        pools.values()
                .forEach(clubs -> cells.add(
                        ReasonTable.Cell.of(number <= clubs.size() ? event.clubName(clubs.get(number - 1)) : "")));
        return ReasonTable.Row.of(cells);
    }

    private static WorkView.Section replay(VisibleEvent event, DrawFact.PoolsDrawn drawn) {
        WorkView.Section section =
                WorkView.Section.of("replay", "", Words.say(event, "page-organiser.number-i-of-a-draw"));
        PoolDrawResult again = again(event, drawn);
        if (again instanceof PoolDrawResult.Drawn one && pools(one).equals(new TreeMap<>(drawn.pools()))) {
            return section.with(steps(event, one.steps()));
        }
        return section.saying(List.of(Words.say(event, "page-organiser.clubs-seeds-or-towns-were")));
    }

    private static PoolDrawResult again(VisibleEvent event, DrawFact.PoolsDrawn drawn) {
        List<Entrant> entrants = event.clubs().stream()
                .filter(club -> drawn.pools().values().stream().anyMatch(pool -> pool.contains(club.id())))
                .map(club -> new Entrant(club.id(), club.name(), club.town(), club.seed()))
                .toList();
        boolean apart = event.conditions().drawSeparation() == DrawSeparation.TOWN;
        return PoolDraw.draw(entrants, drawn.pools().size(), apart, drawn.spokenSeed());
    }

    private static Map<String, List<ClubId>> pools(PoolDrawResult.Drawn drawn) {
        return drawn.pools().stream()
                .collect(Collectors.toMap(Pool::name, Pool::clubs, (one, other) -> one, TreeMap::new));
    }

    static ReasonTable steps(VisibleEvent event, List<DrawStep> steps) {
        List<ReasonTable.Row> rows = steps.stream()
                .map(step -> ReasonTable.Row.of(List.of(
                        ReasonTable.Cell.of(subject(event, step.subject())),
                        ReasonTable.Cell.of(step.chosen()),
                        ReasonTable.Cell.of(how(Words.of(event), step)),
                        ReasonTable.Cell.of(step.choices().stream()
                                .map(choice -> choice.name() + " (" + choice.weight() + ")")
                                .collect(Collectors.joining(", "))))))
                .toList();
        return new ReasonTable(
                "steps",
                Words.say(event, "page-organiser.step-by-step"),
                List.of(
                        new ReasonTable.Column(Words.say(event, "page-organiser.what"), false),
                        new ReasonTable.Column(Words.say(event, "page-organiser.went-to"), false),
                        new ReasonTable.Column(Words.say(event, "page-organiser.how"), false),
                        new ReasonTable.Column(Words.say(event, "page-organiser.choices-weights"), false)),
                rows,
                "");
    }

    private static String subject(VisibleEvent event, String code) {
        return event.clubs().stream()
                .filter(club -> club.id().code().equals(code))
                .findFirst()
                .map(club -> club.name() + " (" + code + ")")
                .orElse(code);
    }

    private static String how(Words words, DrawStep step) {
        return switch (step.how()) {
            case SEEDED -> words.say("page-organiser.placed-as-a-seed");
            case ONLY_CHOICE -> words.say("page-organiser.only-choice-left");
            case DRAWN ->
                words.say(
                        "page-organiser.by-its-number",
                        "purpose",
                        step.purpose(),
                        "number",
                        String.valueOf(step.hash()),
                        "drawn",
                        String.valueOf(step.drawn()));
        };
    }
}
