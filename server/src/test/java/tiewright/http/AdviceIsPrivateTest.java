package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.PlayFact;
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
            "/captain/record/tried",
            "/captain/squad",
            "/captain/playing-time",
            "/captain/past",
            "/captain/film",
            "/captain/past/past-results.csv",
            "/captain/film/games.csv",
            "/captain/film/rallies.csv",
            "/desk",
            "/desk/tie/A1",
            "/log",
            "/hurt",
            "/organiser/private-data",
            "/organiser");

    /** What a form has seen travels sealed: its bytes are new each time, its length must not be. */
    private static final Pattern SEEN = Pattern.compile("name=\"seen\" value=\"([^\"]*)\"");

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
                seen.add(said(page, guest.get(page)));
            }
        }
        return seen;
    }

    private static String said(String page, Guest.Got got) {
        return page + " " + got.status() + " "
                + SEEN.matcher(got.body()
                                .replaceAll("127\\.0\\.0\\.1:[0-9]+", "here")
                                .replaceAll("name=\"key\" value=\"[^\"]*\"", ""))
                        .replaceAll(token -> "seen, of length " + token.group(1).length());
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
                    .contains("Drawn for your club, draw 7", "rubbers");
            assertThat(captain.get("/captain/squad").text()).contains("1 of 8 rated", "+8.2");
            List<String> busy = seen(served);
            for (int i = 0; i < quiet.size(); i++) {
                assertThat(busy.get(i).lines().toList())
                        .containsExactlyElementsOf(quiet.get(i).lines().toList());
            }
        }
    }

    /** What others had on their screens is answered in the same way, and the log of the service says the same. */
    @Test
    void forms_of_others_and_the_log_do_not_tell_that_a_club_noted_something() {
        assertThat(answersToOthers(AdviceIsPrivateTest::noteAndClash)).isEqualTo(answersToOthers((one, other) -> {}));
    }

    private static void noteAndClash(Guest captain, Guest deputy) {
        String form = "/captain/squad/form";
        Map<String, String> first =
                captain.filled("/captain/squad", form, Map.of("player", "N1", "form-N1", "8", "doubt-N1", "1"));
        Map<String, String> second =
                deputy.filled("/captain/squad", form, Map.of("player", "N1", "form-N1", "2", "doubt-N1", "1"));
        assertThat(captain.post(form, first).status()).isEqualTo(200);
        assertThat(captain.post(form, first).status()).as("again").isEqualTo(200);
        assertThat(deputy.post(form, second).status()).isEqualTo(409);
        assertThat(deputy.send("/captain/squad", "/captain/squad/half-life", Map.of("half-life", "0"))
                        .status())
                .isEqualTo(422);
        deputy.send("/captain/squad", "/captain/squad/forget", Map.of("forget-player", "N1"));
    }

    private static List<String> answersToOthers(BiConsumer<Guest, Guest> between) {
        Logger log = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        ListAppender<ILoggingEvent> lines = new ListAppender<>();
        try (Served served = oneTie()) {
            Guest captain = served.captain("N");
            Guest deputy = served.captain("N");
            Guest rival = served.captain("S");
            Guest desk = served.as(Role.DESK);
            Map<String, String> judged = rival.filled(
                    "/captain/squad", "/captain/squad/form", Map.of("player", "S1", "form-S1", "3", "doubt-S1", ""));
            Map<String, String> wished = rival.filled(
                    "/captain/proposal/A1", "/captain/proposal/A1/wishes", Map.of("player", "S2", "wish", "rest"));
            Map<String, String> hurt = desk.filled("/hurt", "/hurt", Map.of("player", "N3"));
            lines.start();
            log.addAppender(lines);
            between.accept(captain, deputy);
            List<String> said = new ArrayList<>(List.of(
                    said("form", rival.post("/captain/squad/form", judged)),
                    said("wish", rival.post("/captain/proposal/A1/wishes", wished)),
                    said("hurt", desk.post("/hurt", hurt))));
            said.addAll(seen(served));
            lines.list.forEach(line -> said.add(line.getFormattedMessage()));
            return said;
        } finally {
            log.detachAppender(lines);
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
            Guest north = served.captain("N");
            Guest south = served.captain("S");
            north.send(
                    "/captain/squad", "/captain/squad/form", Map.of("player", "N1", "form-N1", "8", "doubt-N1", "1"));
            assertThat(north.get("/captain/record").text())
                    .contains("none with a forecast has ended yet")
                    .doesNotContain("Rubber 1");
            served.at(Days.moment("09:46"));
            String own = record(north);
            assertThat(own).contains("Rubber 1", "Rubber 4", "no result yet", "gave away");
            String theirs = record(south);
            assertThat(theirs).contains("Rubber 1").isNotEqualTo(own);
            assertThat(theirs).contains("50.0 %");
            assertThat(scored(served, north, "11-5"))
                    .contains("1 forecast. Log score")
                    .doesNotContain("1 forecasts");
            assertThat(scored(served, north, "11-5", "11-5")).contains("2 forecasts. Log score");
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

    /** The page of the own record once so many rubbers have ended. */
    private static String scored(Served served, Guest captain, String... games) {
        List<Fact> cards = new ArrayList<>();
        for (String game : games) {
            RubberNo rubber = RubberNo.of(cards.size() + 1);
            cards.add(new PlayFact.CardEntered(TieId.of("A1"), rubber, Days.games(game), How.PLAYED));
        }
        served.given(cards, List.of());
        return captain.get("/captain/record").text();
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
