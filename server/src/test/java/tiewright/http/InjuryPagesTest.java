package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.desk.CallToCourt;
import tiewright.event.Days;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** A fall through the pages: one press, help first, the clock, no word in public of why, a question before the next sheet. */
class InjuryPagesTest {
    private static final String STOP = "/stop/A1/3";

    private static Served day() {
        Days day = Days.oneTie()
                .opened("A1")
                .cards("A1", "11-4", "4-11")
                .at("10:50")
                .does(new CallToCourt(TieId.of("A1"), RubberNo.of(3), "1"))
                .poolTie("A2", "A", 2, "N", "S")
                .timed("A2", "14:00", "2");
        return Served.of(day, Days.moment("11:02"));
    }

    @Test
    void who_came_by_hurt_stops_a_court_by_one_press() {
        try (Served served = day()) {
            for (Guest guest : List.of(served.captain("N"), served.as(Role.REFEREE), served.as(Role.DESK))) {
                assertThat(guest.get("/hurt").body()).contains("action=\"" + STOP + "\"");
            }
            served.given(
                    List.of(new tiewright.event.SetUpFact.ClubEntered(
                            tiewright.event.ClubId.of("X"),
                            "Club X",
                            java.util.Optional.empty(),
                            java.util.OptionalInt.empty())),
                    List.of());
            assertThat(served.captain("X").get("/hurt").body())
                    .as("no captain stops the court of others")
                    .doesNotContain("action=\"" + STOP + "\"");
            assertThat(served.as(Role.DESK).send("/hurt", STOP, Map.of()).path())
                    .isEqualTo(STOP);
        }
    }

    /** Whoever is asked to call an emergency number reads it there. */
    @Test
    void the_number_to_call_stands_beside_the_advice_to_call_it() {
        try (Served served = day()) {
            served.given(List.of(new tiewright.event.SetUpFact.SafetyDescribed("desk", "hall door", "111")), List.of());
            for (Guest guest : List.of(served.captain("N"), served.as(Role.VOLUNTEER), served.as(Role.DESK))) {
                assertThat(guest.get("/hurt").text())
                        .contains("First aid: desk", "Defibrillator: hall door", "Emergency number: 111");
            }
        }
    }

    @Test
    void one_press_at_the_desk_stops_it_and_says_what_to_say() {
        try (Served served = day()) {
            Guest desk = served.as(Role.DESK);
            Map<String, String> second = served.as(Role.DESK).filled("/desk", STOP, Map.of());
            Guest.Got stopped = desk.send("/desk", STOP, Map.of());
            assertThat(stopped.path()).isEqualTo(STOP);
            long once = served.ledger.event().seq();
            assertThat(desk.post(STOP, second).status())
                    .as("pressed by two people")
                    .isEqualTo(200);
            assertThat(served.ledger.event().seq()).isEqualTo(once);
            assertThat(stopped.text())
                    .contains(
                            "Say aloud: \"Court 1, somebody is hurt.\"",
                            "Nobody has entered where first aid is. Ask the desk at once.",
                            "No emergency number was entered.",
                            "The medical time of the conditions runs until 11:17; from 11:15 on",
                            "This is not medical advice.");
            served.clock.pass(java.time.Duration.ofMinutes(13));
            assertThat(desk.get(STOP).text()).contains("Two minutes at most are left, until 11:17.");
            served.clock.pass(java.time.Duration.ofMinutes(2));
            assertThat(desk.get(STOP).text()).contains("the referee decides. Nothing is lost by itself.");
            assertThat(desk.get("/desk").text()).contains("the medical time ended at 11:17. The referee decides");
            assertThat(served.ledger
                            .event()
                            .tie(TieId.of("A1"))
                            .orElseThrow()
                            .card(RubberNo.of(3))
                            .entries())
                    .isEmpty();
        }
    }

    @Test
    void where_help_is_stands_there_once_the_organiser_entered_it() {
        try (Served served = day()) {
            Guest organiser = served.as(Role.ORGANISER);
            organiser.send(
                    "/organiser/help",
                    "/organiser/help",
                    Map.of("firstAid", "By the entrance, Ola", "defibrillator", "", "emergency", "112"));
            assertThat(organiser.get(STOP).text())
                    .contains(
                            "First aid: By the entrance, Ola",
                            "Emergency number: 112",
                            "Nobody has entered where a defibrillator is");
        }
    }

    @Test
    void in_public_it_reads_stopped_retired_or_unavailable_and_never_why() {
        try (Served served = day()) {
            Guest captain = served.captain("N");
            assertThat(captain.send("/cards/A1", STOP, Map.of()).path()).isEqualTo(STOP);
            captain.send(STOP, "/hurt", Map.of("player", "N5"));
            assertThat(served.ledger.hurt()).containsExactly(PlayerId.of("N5"));
            Guest anybody = served.stranger();
            assertThat(anybody.get("/tie/A1").text())
                    .contains("play stopped", "stopped since 11:02")
                    .doesNotContainIgnoringCase("hurt", "injur", "medical", "ill ");
            served.given(
                    List.of(new ExchangeFact.PairReplaced(
                            ExchangeId.sheets(TieId.of("A1")),
                            tiewright.event.ClubId.of("N"),
                            RubberNo.of(4),
                            Optional.empty(),
                            "injury",
                            "R. Referee")),
                    List.of());
            assertThat(anybody.get("/tie/A1").text())
                    .contains("(unavailable, approved by R. Referee)")
                    .doesNotContain("injury");
            assertThat(captain.get("/tie/A1").text()).contains("(injury, approved by R. Referee)");
            assertThat(served.captain("S").get("/tie/A1").text()).doesNotContain("injury");
            for (String page : List.of("/", "/ties", "/tables", "/notices", "/clubs", "/club/N")) {
                assertThat(anybody.get(page).text()).as(page).doesNotContainIgnoringCase("hurt", "injur", "medical");
            }
        }
    }

    @Test
    void a_later_sheet_asks_the_own_captain_and_bars_nobody() {
        try (Served served = day()) {
            served.noted("N", new PrivateNote.HurtMarked(PlayerId.of("N5"), true));
            Guest captain = served.captain("N");
            Guest.Got sheet = captain.get("/captain/sheet/A2");
            assertThat(sheet.text())
                    .contains(
                            "Player N5 is marked as hurt or ill today. Ask Player N5, and first aid or the referee",
                            "Nobody is barred here");
            assertThat(sheet.body()).contains("value=\"N5\"");
            assertThat(served.captain("S").get("/captain/sheet/A2").text()).doesNotContain("Player N5");
            Map<String, String> pairs = new java.util.LinkedHashMap<>();
            int[] order = {5, 6, 1, 2, 3, 4, 7, 8};
            for (int rubber = 1; rubber <= 4; rubber++) {
                pairs.put("sheet-" + rubber + "-first", "N" + order[2 * rubber - 2]);
                pairs.put("sheet-" + rubber + "-second", "N" + order[2 * rubber - 1]);
            }
            pairs.put("step", "seal");
            assertThat(captain.send("/captain/sheet/A2", "/captain/sheet/A2", pairs)
                            .status())
                    .as("a question before the press")
                    .isEqualTo(422);
            pairs.put("hurt-asked", "yes");
            captain.send("/captain/sheet/A2", "/captain/sheet/A2", pairs);
            assertThat(served.ledger
                            .event()
                            .exchange(ExchangeId.sheets(TieId.of("A2")))
                            .home()
                            .isIn())
                    .isTrue();
            captain.send("/hurt", "/hurt", Map.of("player", "N5", "form", "well"));
            assertThat(served.ledger.hurt()).isEmpty();
            assertThat(captain.get("/captain/sheet/A2").text()).doesNotContain("marked as hurt");
        }
    }

    @Test
    void a_captain_marks_and_reads_the_own_squad_alone_and_others_nothing() {
        try (Served served = day()) {
            served.noted("N", new PrivateNote.HurtMarked(PlayerId.of("N5"), true));
            Guest other = served.captain("S");
            assertThat(other.get("/hurt").text()).contains("Nobody is marked").doesNotContain("Player N5");
            assertThat(other.send("/hurt", "/hurt", Map.of("player", "N1")).status())
                    .isEqualTo(422);
            assertThat(served.ledger.hurt()).containsExactly(PlayerId.of("N5"));
            assertThat(served.as(Role.VOLUNTEER).get("/hurt").text())
                    .contains("Court 1")
                    .doesNotContain("Marked today", "Who it is", "Player N5");
            assertThat(served.as(Role.VOLUNTEER)
                            .post("/hurt", Map.of("player", "N5"))
                            .status())
                    .isEqualTo(403);
            assertThat(served.stranger().get("/hurt").status()).isEqualTo(403);
            assertThat(served.player("N", "N5").get("/hurt").status()).isEqualTo(403);
            assertThat(served.as(Role.DESK).get("/hurt").text()).contains("Player N5, Club N");
            assertThat(served.as(Role.REFEREE).get("/log").body().replaceAll("(?s).*<main|</main>.*", ""))
                    .as("round the page stands the way to stop a court, for everybody who may")
                    .contains("Card")
                    .doesNotContainIgnoringCase("hurt");
        }
    }
}
