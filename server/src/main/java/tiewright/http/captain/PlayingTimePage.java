package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.PlayingTimeView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.lineup.club.PlayingDay;
import tiewright.wording.Words;

/** Who of the squad was named how often, counted from the opened sheets, beside what the captain promised. */
final class PlayingTimePage implements Page {

    @Override
    public void at(Routes routes) {
        routes.get(
                Door.NOTES,
                "/captain/playing-time",
                visit -> visit.show(Screen.of(
                        "playingTime",
                        visit.say(
                                "page-captain.playing-time",
                                "club",
                                visit.event().clubName(visit.club())),
                        view(
                                visit.event(),
                                visit.club(),
                                visit.ask(ClubAnswers::new).playingDay()))));
    }

    /** @param lines one for each rubber the player was named for */
    private record Time(int ties, int rubbers, List<String> lines) {}

    private static PlayingTimeView view(VisibleEvent event, ClubId club, PlayingDay day) {
        List<Tie> opened = TieOrder.sorted(event.tiesOf(club)).stream()
                .filter(Tie::isOpened)
                .toList();
        List<ReasonTable.Row> rows = new ArrayList<>();
        List<String> text = new ArrayList<>();
        for (Player player : event.squad(club)) {
            Time time = time(event, club, opened, player.id());
            List<String> cells = cells(event, player, time, opened.size());
            if (day.isAnythingPromised()) {
                day.line(player.id()).ifPresent(line -> cells.addAll(promised(line)));
            }
            rows.add(row(event, cells, time));
            text.add(text(event, player, time));
        }
        return new PlayingTimeView(table(event, day, opened.size(), rows), copy(event, text));
    }

    private static ReasonTable table(VisibleEvent event, PlayingDay day, int opened, List<ReasonTable.Row> rows) {
        return new ReasonTable(
                "playing-time",
                Words.say(event, "page-captain.from-opened-sheets", "opened", opened),
                columns(event, day),
                rows,
                counted(event, day));
    }

    private static ReasonTable.Row row(VisibleEvent event, List<String> cells, Time time) {
        return new ReasonTable.Row(
                cells.stream().map(ReasonTable.Cell::of).toList(),
                Words.say(event, "page-captain.which"),
                time.lines().isEmpty() ? List.of(Words.say(event, "page-captain.not-named-yet")) : time.lines(),
                "");
    }

    private static List<String> cells(VisibleEvent event, Player player, Time time, int opened) {
        return new ArrayList<>(List.of(
                event.name(player.id()),
                Integer.toString(time.rubbers()),
                Integer.toString(time.ties()),
                Integer.toString(opened - time.ties())));
    }

    private static String text(VisibleEvent event, Player player, Time time) {
        return Words.say(
                event,
                "page-captain.rubbers-in-ties",
                "player",
                event.name(player.id()),
                "rubbers",
                time.rubbers(),
                "ties",
                time.ties());
    }

    private static CopyText copy(VisibleEvent event, List<String> text) {
        return new CopyText(
                "copy-playing-time",
                Words.say(event, "page-captain.playing-time-as-text"),
                String.join("\n", text),
                Words.say(event, "page-captain.copy"),
                Words.say(event, "page-captain.copied"));
    }

    private static String counted(VisibleEvent event, PlayingDay day) {
        return Words.say(
                event,
                day.isAnythingPromised()
                        ? "page-captain.counted-from-and-promised"
                        : "page-captain.counted-from-opened-sheets");
    }

    private static List<ReasonTable.Column> columns(VisibleEvent event, PlayingDay day) {
        List<ReasonTable.Column> columns = new ArrayList<>(List.of(
                new ReasonTable.Column(Words.say(event, "page-captain.player"), false),
                new ReasonTable.Column(Words.say(event, "page-captain.column-rubbers"), true),
                new ReasonTable.Column(Words.say(event, "page-captain.column-ties"), true),
                new ReasonTable.Column(Words.say(event, "page-captain.rested"), true)));
        if (day.isAnythingPromised()) {
            columns.add(new ReasonTable.Column(Words.say(event, "page-captain.promised"), true));
            columns.add(new ReasonTable.Column(Words.say(event, "page-captain.still-missing"), true));
        }
        return columns;
    }

    private static List<String> promised(PlayingDay.Line line) {
        return line.promised() == 0
                ? List.of("", "")
                : List.of(Integer.toString(line.promised()), Integer.toString(line.missing()));
    }

    private static Time time(VisibleEvent event, ClubId club, List<Tie> opened, PlayerId player) {
        List<String> lines = new ArrayList<>();
        int ties = 0;
        for (Tie tie : opened) {
            Side side = tie.sideOf(club).orElseThrow();
            List<String> here = tie.opened().entrySet().stream()
                    .filter(rubber -> rubber.getValue()
                            .pair(side)
                            .filter(pair -> pair.has(player))
                            .isPresent())
                    .map(rubber ->
                            new TieViews(event).title(tie) + ", " + TieViews.rubber(Words.of(event), rubber.getKey()))
                    .toList();
            lines.addAll(here);
            ties += here.isEmpty() ? 0 : 1;
        }
        return new Time(ties, lines.size(), lines);
    }
}
