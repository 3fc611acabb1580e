package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.TieId;
import tiewright.sheet.SealSheet;

/** What the advice rests on, proposes, plans and forecasts is the own captain's business alone. */
class AdviceIsPrivateTest {
  private static final List<String> PAGES = List.of(
      "/", "/ties", "/tie/A1", "/tables", "/club/N", "/player/N1", "/captain", "/captain/proposal/A1", "/captain/day", "/captain/record",
      "/captain/squad", "/captain/playing-time", "/desk", "/desk/tie/A1", "/log", "/organiser");

  private static Served oneTie() {
    Days day = Days.oneTie();
    return Served.empty(Days.moment("09:00")).given(day.facts().stream().map(Recorded::fact).toList(), List.of());
  }

  private static List<Guest> others(Served served) {
    return List.of(
        served.stranger(), served.captain("S"), served.player("N", "N1"), served.as(Role.VOLUNTEER), served.as(Role.DESK),
        served.as(Role.REFEREE), served.as(Role.ORGANISER));
  }

  private static List<String> seen(Served served) {
    List<String> seen = new ArrayList<>();
    for (Guest guest : others(served)) {
      for (String page : PAGES) {
        Guest.Got got = guest.get(page);
        seen.add(page + " " + got.status() + " "
            + got.body().replaceAll("127\\.0\\.0\\.1:[0-9]+", "here").replaceAll("name=\"(key|seen)\" value=\"[^\"]*\"", ""));
      }
    }
    return seen;
  }

  /** Twin days that differ only in what a captain noted, asked and planned give everybody else the same bytes. */
  @Test
  void judgements_wishes_questions_and_plans_leave_no_trace_elsewhere() {
    List<String> quiet;
    try (Served served = oneTie()) {
      served.captain("N"); // has a link, which the log tells, and does nothing
      quiet = seen(served);
    }
    try (Served served = oneTie()) {
      Guest captain = served.captain("N");
      captain.send("/captain/squad", "/captain/squad/form", Map.of("player", "N1", "form-N1", "8", "doubt-N1", "1"));
      captain.send("/captain/proposal/A1", "/captain/proposal/A1/wishes", Map.of("player", "N2", "wish", "play"));
      captain.send("/captain/day", "/captain/day/promise", Map.of("promise-player", "N8", "promise-rubbers", "1"));
      captain.send("/captain/day", "/captain/day", Map.of("floor", "1", "row", "", "learn", "yes"));
      assertThat(captain.get("/captain/proposal/A1?aim=rubbers&seed=7").text()).contains("Drawn with the number 7", "rubbers");
      assertThat(captain.get("/captain/squad").text()).contains("+8 in 100");
      List<String> busy = seen(served);
      for (int i = 0; i < quiet.size(); i++) {
        assertThat(busy.get(i).lines().toList()).containsExactlyElementsOf(quiet.get(i).lines().toList());
      }
    }
  }

  @Test
  void forecasts_are_made_at_the_opening_and_shown_to_the_own_captain_only() {
    try (Served served = oneTie()) {
      for (String club : List.of("N", "S")) {
        served.ask(Days.captain(club), new SealSheet(
            ExchangeId.sheets(TieId.of("A1")), ClubId.of(club), Days.straight(club, 4), "ab".repeat(32)));
      }
      served.captain("N").send("/captain/squad", "/captain/squad/form", Map.of("player", "N1", "form-N1", "8", "doubt-N1", "1"));
      assertThat(served.captain("N").get("/captain/record").text()).contains("none with a forecast has ended yet").doesNotContain("Rubber 1");
      served.at(Days.moment("09:46"));
      String own = record(served.captain("N"));
      assertThat(own).contains("Rubber 1", "Rubber 4", "no result yet", "gave away");
      String theirs = record(served.captain("S"));
      assertThat(theirs).contains("Rubber 1").isNotEqualTo(own);
      assertThat(theirs).contains("50.0 %");
      for (Guest other : List.of(served.stranger(), served.player("N", "N1"), served.as(Role.DESK), served.as(Role.REFEREE), served.as(Role.ORGANISER))) {
        assertThat(other.get("/captain/record").text()).doesNotContain("Log score", "Rubber 1");
      }
    }
  }

  /** Forecasts are written on a thread of their own as the sheets open; the page has them a moment later. */
  private static String record(Guest captain) {
    String text = captain.get("/captain/record").text();
    for (int look = 0; look < 400 && !text.contains("Rubber 4"); look++) {
      text = captain.get("/captain/record").text();
    }
    return text;
  }
}
