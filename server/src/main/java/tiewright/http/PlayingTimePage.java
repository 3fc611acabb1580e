package tiewright.http;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.PlayingTimeView;

/** Who of the squad was named how often: counted from the opened sheets and nothing else. */
final class PlayingTimePage implements Page {

  @Override
  public void at(Routes routes) {
    routes.get(Door.CAPTAIN, "/captain/playing-time", visit -> visit.show(
        Screen.of("playingTime", visit.event().clubName(visit.club()) + ": playing time", view(visit.event(), visit.club()))));
  }

  /** @param lines one for each rubber the player was named for */
  private record Time(int ties, int rubbers, List<String> lines) {}

  private static PlayingTimeView view(VisibleEvent event, ClubId club) {
    List<Tie> opened = NowPage.sorted(event.tiesOf(club)).stream().filter(Tie::isOpened).toList();
    List<ReasonTable.Row> rows = new ArrayList<>();
    List<String> text = new ArrayList<>();
    for (Player player : event.squad(club)) {
      Time time = time(event, club, opened, player.id());
      rows.add(new ReasonTable.Row(
          List.of(
              ReasonTable.Cell.of(event.name(player.id())), ReasonTable.Cell.of(Integer.toString(time.rubbers())),
              ReasonTable.Cell.of(Integer.toString(time.ties())), ReasonTable.Cell.of(Integer.toString(opened.size() - time.ties()))),
          "Which", time.lines().isEmpty() ? List.of("Not named yet.") : time.lines(), false));
      text.add(event.name(player.id()) + ": " + time.rubbers() + " rubbers in " + time.ties() + " ties");
    }
    return new PlayingTimeView(
        new ReasonTable("playing-time", "From " + opened.size() + " opened sheets", List.of(
            new ReasonTable.Column("Player", false), new ReasonTable.Column("Rubbers", true),
            new ReasonTable.Column("Ties played", true), new ReasonTable.Column("Ties rested", true)), rows,
            "Counted from the opened sheets, deciders and changed pairs included."),
        new CopyText("copy-playing-time", "Playing time as text", String.join("\n", text), "Copy", "Copied"));
  }

  private static Time time(VisibleEvent event, ClubId club, List<Tie> opened, PlayerId player) {
    List<String> lines = new ArrayList<>();
    int ties = 0;
    for (Tie tie : opened) {
      Side side = tie.sideOf(club).orElseThrow();
      List<String> here = tie.opened().entrySet().stream()
          .filter(rubber -> rubber.getValue().pair(side).filter(pair -> pair.has(player)).isPresent())
          .map(rubber -> new TieViews(event).title(tie) + ", " + TieViews.rubber(rubber.getKey()))
          .toList();
      lines.addAll(here);
      ties += here.isEmpty() ? 0 : 1;
    }
    return new Time(ties, lines.size(), lines);
  }
}
