package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.sheet.SealSheet;

/** What the advice rests on, proposes, plans and forecasts is the own captain's business alone. */
class AdviceIsPrivateTest {
    private static final List<String> PAGES = List.of(
            "/",
            "/ties",
            "/tie/A1",
            "/tables",
            "/club/N",
            "/player/N1",
            "/captain",
            "/captain/proposal/A1",
            "/captain/day",
            "/captain/record",
            "/captain/squad",
            "/captain/playing-time",
            "/captain/form",
            "/captain/past",
            "/captain/film",
            "/captain/past/past-results.csv",
            "/captain/film/games.csv",
            "/captain/film/rallies.csv",
            "/desk",
            "/desk/tie/A1",
            "/log",
            "/organiser");

    private static final String WON_EARLIER = """
      date,home_1,home_2,away_1,away_2,home,away,format
      2026-05-02,N1,N2,S1,S2,11,1,side-out-11
      2026-05-03,N1,N2,S1,S2,11,2,side-out-11
      """;
    private static final String GAME = """
      game,tie,rubber,format,first_server,right_1,left_1,right_2,left_2,card_1,card_2
      G1,,,side-out-99,N1,N1,N2,S1,S2,,
      """;

    private static Served oneTie() {
        Days day = Days.oneTie();
        return Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
    }

    private static List<Guest> others(Served served) {
        return List.of(
                served.stranger(),
                served.captain("S"),
                served.player("N", "N1"),
                served.as(Role.VOLUNTEER),
                served.as(Role.DESK),
                served.as(Role.REFEREE),
                served.as(Role.ORGANISER));
    }

    private static List<String> seen(Served served) {
        List<String> seen = new ArrayList<>();
        for (Guest guest : others(served)) {
            for (String page : PAGES) {
                Guest.Got got = guest.get(page);
                seen.add(page + " " + got.status() + " "
                        + got.body()
                                .replaceAll("127\\.0\\.0\\.1:[0-9]+", "here")
                                .replaceAll("name=\"(key|seen)\" value=\"[^\"]*\"", ""));
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
            captain.send(
                    "/captain/squad", "/captain/squad/form", Map.of("player", "N1", "form-N1", "8", "doubt-N1", "1"));
            captain.send("/captain/proposal/A1", "/captain/proposal/A1/wishes", Map.of("player", "N2", "wish", "play"));
            captain.send(
                    "/captain/day", "/captain/day/promise", Map.of("promise-player", "N8", "promise-rubbers", "1"));
            captain.sendInParts("/captain/past", "/captain/past", Map.of("past-results.csv", WON_EARLIER), Map.of());
            captain.sendInParts(
                    "/captain/film",
                    "/captain/film",
                    Map.of("games.csv", GAME, "rallies.csv", wonOnFilm(30)),
                    Map.of());
            captain.send("/captain/day", "/captain/day", Map.of("floor", "1", "row", "", "learn", "yes"));
            assertThat(captain.get("/captain/proposal/A1?aim=rubbers&seed=7").text())
                    .contains("Drawn with the number 7", "rubbers");
            assertThat(captain.get("/captain/squad").text()).contains("+8 in 100");
            List<String> busy = seen(served);
            for (int i = 0; i < quiet.size(); i++) {
                assertThat(busy.get(i).lines().toList())
                        .containsExactlyElementsOf(quiet.get(i).lines().toList());
            }
        }
    }

    @Test
    void forecasts_are_made_at_the_opening_and_shown_to_the_own_captain_only() {
        try (Served served = oneTie()) {
            for (String club : List.of("N", "S")) {
                served.ask(
                        Days.captain(club),
                        new SealSheet(
                                ExchangeId.sheets(TieId.of("A1")),
                                ClubId.of(club),
                                Days.straight(club, 4),
                                "ab".repeat(32)));
            }
            served.captain("N")
                    .send(
                            "/captain/squad",
                            "/captain/squad/form",
                            Map.of("player", "N1", "form-N1", "8", "doubt-N1", "1"));
            assertThat(served.captain("N").get("/captain/record").text())
                    .contains("none with a forecast has ended yet")
                    .doesNotContain("Rubber 1");
            served.at(Days.moment("09:46"));
            String own = record(served.captain("N"));
            assertThat(own).contains("Rubber 1", "Rubber 4", "no result yet", "gave away");
            String theirs = record(served.captain("S"));
            assertThat(theirs).contains("Rubber 1").isNotEqualTo(own);
            assertThat(theirs).contains("50.0 %");
            for (Guest other : List.of(
                    served.stranger(),
                    served.player("N", "N1"),
                    served.as(Role.DESK),
                    served.as(Role.REFEREE),
                    served.as(Role.ORGANISER))) {
                assertThat(other.get("/captain/record").text()).doesNotContain("Log score", "Rubber 1");
            }
        }
    }

    /** What is written down as the sheets open rests on all that the captain's proposal rests on. */
    @Test
    void forecasts_rest_on_film_and_on_the_clubs_own_earlier_games() {
        double without = forecastOf(List.of());
        assertThat(forecastOf(List.of("past"))).isGreaterThan(without + 0.02);
        assertThat(forecastOf(List.of("film"))).isGreaterThan(without + 0.02);
        assertThat(forecastOf(List.of("past", "film")))
                .isGreaterThan(Math.max(forecastOf(List.of("past")), forecastOf(List.of("film"))));
    }

    /** The chance that is written down for the first rubber of N1 and N2, who won all that is given. */
    private static double forecastOf(List<String> given) {
        try (Served served = oneTie()) {
            Guest captain = served.captain("N");
            if (given.contains("past")) {
                captain.sendInParts(
                        "/captain/past", "/captain/past", Map.of("past-results.csv", WON_EARLIER), Map.of());
            }
            if (given.contains("film")) {
                captain.sendInParts(
                        "/captain/film",
                        "/captain/film",
                        Map.of("games.csv", GAME, "rallies.csv", wonOnFilm(6)),
                        Map.of());
            }
            for (String club : List.of("N", "S")) {
                served.ask(
                        Days.captain(club),
                        new SealSheet(
                                ExchangeId.sheets(TieId.of("A1")),
                                ClubId.of(club),
                                Days.straight(club, 4),
                                "ab".repeat(32)));
            }
            served.at(Days.moment("09:46"));
            record(captain);
            return served.ledger.forecasts(ClubId.of("N")).stream()
                    .filter(forecast -> forecast.part().equals(Optional.of(RubberNo.of(1))))
                    .findFirst()
                    .orElseThrow()
                    .chance();
        }
    }

    private static String wonOnFilm(int rallies) {
        StringBuilder text = new StringBuilder(
                "game,rally,server,ending,player,where,serve,return,third,third_to,signal,call,call_by,call_end,mark,film_time\n");
        for (int i = 1; i <= rallies; i++) {
            text.append("G1,").append(i).append(",,earned,N1,,,,,,,,,,,\n");
        }
        return text.toString();
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
