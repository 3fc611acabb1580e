package tiewright.http.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.desk.MarkHurt;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.views.ActionForm;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;

/** Who is marked as hurt or ill: for officials and each own captain, never published; it asks later, it bars nobody. */
final class HurtPage implements Page {
    private static final String HERE = "/hurt";
    private static final String MARK = "mark";
    private static final String WELL = "well";

    @Override
    public void at(Routes routes) {
        routes.get(Door.STOP, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.COURT, HERE, HurtPage::mark);
    }

    private static void mark(Visit visit) {
        Form form = visit.form();
        Optional<PlayerId> id = form.must("player", form.read("player", "form.not-a-player", PlayerId::of));
        Optional<Player> player = form.must(
                "player",
                id.flatMap(visit.event()::player)
                        .filter(one ->
                                visit.role().isOfficial() || visit.viewer().isCaptainOf(one.club())));
        if (player.isEmpty()) {
            visit.refuse(form, tried -> screen(visit, tried));
            return;
        }
        visit.noteFor(
                player.get().club(),
                form,
                new MarkHurt(player.get().id(), !form.text(Fields.FORM).equals(WELL)),
                HERE,
                tried -> screen(visit, tried));
    }

    /** The way to mark somebody of a tie; a captain chooses from the own squad alone. */
    static WorkView.Section marking(Visit visit, Tie tie) {
        List<ClubId> clubs = Stream.of(Side.values())
                .flatMap(side -> tie.club(side).stream())
                .filter(club -> isFor(visit, club))
                .toList();
        return section(visit, clubs, Tried.NOTHING);
    }

    private static boolean isFor(Visit visit, ClubId club) {
        return visit.role().isOfficial() || visit.viewer().isCaptainOf(club);
    }

    private static WorkView.Section section(Visit visit, List<ClubId> clubs, Tried tried) {
        return WorkView.Section.of(
                        MARK, visit.say("page-desk.who-it-is"), visit.say("page-desk.only-officials-and-the-own"))
                .with(new WorkView.WorkForm(
                                MARK,
                                HERE,
                                List.of(Fields.of(MARK, tried)
                                        .select(
                                                "player",
                                                visit.say("page-desk.the-player"),
                                                visit.say("page-desk.choose-the-player"),
                                                "",
                                                options(visit, clubs, false))),
                                List.of(Button.other(visit.say("page-desk.mark-as-hurt-or-ill"))))
                        .keptAs(visit.say("page-desk.mark-as-hurt-or-ill")));
    }

    /** The courts that this viewer may stop, one press each, before any question. */
    private static List<WorkView.Section> stops(Visit visit) {
        List<WorkView.Section> stops = new ArrayList<>();
        for (Tie tie : visit.event().ties()) {
            if (visit.role() == Role.CAPTAIN && !tie.has(visit.club())) {
                continue;
            }
            StopPages.stoppable(visit.event(), tie)
                    .forEach(rubber -> Optional.ofNullable(tie.calls().get(rubber))
                            .ifPresent(call -> stops.add(stop(
                                    visit,
                                    StopPages.press(visit, tie, rubber),
                                    call.court().toString()))));
        }
        return stops;
    }

    private static WorkView.Section stop(Visit visit, ActionForm press, String court) {
        return WorkView.Section.of(press.id(), visit.say("page-desk.court-number", "court", court))
                .with(new WorkView.WorkForm(press.id(), press.path(), List.of(), List.of(press.button())));
    }

    private static List<Option> options(Visit visit, List<ClubId> clubs, boolean hurt) {
        List<Option> options = new ArrayList<>();
        for (ClubId club : clubs) {
            List<PlayerId> marked = visit.ask(Answers::new).hurt(club);
            visit.event().squad(club).stream()
                    .map(Player::id)
                    .filter(player -> marked.contains(player) == hurt)
                    .forEach(player -> options.add(Option.of(
                            player.code(),
                            visit.event().name(player) + ", " + visit.event().clubName(club),
                            false)));
        }
        return options;
    }

    private static Screen screen(Visit visit, Tried tried) {
        List<ClubId> clubs = visit.event().clubs().stream()
                .map(Club::id)
                .filter(club -> isFor(visit, club))
                .toList();
        List<WorkView.Section> sections = stops(visit);
        WorkView.Section help =
                WorkView.Section.of("help", visit.say("page-desk.help-first")).saying(HelpAtHand.lines(visit));
        if (Door.COURT.opensFor(visit.role())) {
            sections.addAll(List.of(help, marked(visit, clubs, tried), section(visit, clubs, tried)));
        } else {
            if (sections.isEmpty()) {
                sections.add(WorkView.Section.of("stop", "", visit.say("page-desk.no-court-is-in-play")));
            }
            sections.add(help);
        }
        return work(visit, tried, sections);
    }

    private static WorkView.Section marked(Visit visit, List<ClubId> clubs, Tried tried) {
        List<Option> marked = options(visit, clubs, true);
        if (marked.isEmpty()) {
            return WorkView.Section.of(WELL, "", visit.say("page-desk.nobody-is-marked-as-hurt"));
        }
        return WorkView.Section.of(WELL, visit.say("page-desk.marked-today"))
                .saying(marked.stream().map(Option::label).toList())
                .with(new WorkView.WorkForm(
                                WELL,
                                HERE,
                                List.of(Fields.of(WELL, tried)
                                        .select(
                                                "player",
                                                visit.say("page-desk.the-player"),
                                                visit.say("page-desk.choose-the-player"),
                                                "",
                                                marked)),
                                List.of(Button.other(visit.say("page-desk.well-again"))))
                        .keptAs(visit.say("page-desk.well-again")));
    }

    private static Screen work(Visit visit, Tried tried, List<WorkView.Section> sections) {
        NavLink back =
                switch (visit.role()) {
                    case CAPTAIN -> new NavLink("/captain", visit.say("page-desk.back-to-my-ties"), false);
                    case VOLUNTEER -> new NavLink("/cards", visit.say("page-desk.back-to-the-cards"), false);
                    case PUBLIC, PLAYER, DESK, ORGANISER, REFEREE ->
                        new NavLink("/desk", visit.say("page-desk.back-to-the-desk"), false);
                };
        return Screen.of(
                "work",
                visit.say("page-desk.hurt-or-ill-today"),
                new WorkView(tried.refusal(), back, Cautions.whenSomebodyIsHurt(visit.words()), sections));
    }
}
