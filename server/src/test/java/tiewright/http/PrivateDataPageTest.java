package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.NamesKept;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.setup.DateDeletion;

/** When private data go: promised by the organiser, told where data are given, kept by the service itself. */
class PrivateDataPageTest {
    private static final String PAGE = "/organiser/private-data";
    private static final String ERASE = PAGE + "/erase";

    private static Served served() {
        Days day = Days.oneTie().opened("A1").cards("A1", "11-0");
        Served served = Served.empty(Days.moment("09:00"))
                .given(
                        day.facts().stream().map(Recorded::fact).toList(),
                        List.of(new PrivateNote.PersonNamed(
                                PlayerId.of("N1"), "Ada Plantedname", OptionalInt.of(1990))));
        served.noted("N", new PrivateNote.FormJudged(PlayerId.of("N1"), OptionalDouble.of(7), OptionalDouble.of(2)));
        return served;
    }

    private static Instant daysAfter(int days) {
        return Days.DATE
                .plusDays(days)
                .atTime(12, 0)
                .atZone(Days.oneTie().event().about().orElseThrow().zone())
                .toInstant();
    }

    private static void promise(Served served, int days, NamesKept names) {
        served.ask(Days.organiser(), new DateDeletion(Days.DATE.plusDays(days), names));
    }

    @Test
    void the_organiser_promises_a_day_and_everybody_who_gives_data_reads_it() {
        try (Served served = served()) {
            Guest organiser = served.as(Role.ORGANISER);
            assertThat(organiser.get(PAGE).text())
                    .contains(
                            "No day is set yet",
                            "Names and birth years of players 1",
                            "What clubs noted for themselves known to each club alone",
                            "The law of the place",
                            "No backup was taken")
                    .doesNotContain("Judgements of a player's form");
            String date = Days.DATE.plusDays(20).toString();
            assertThat(organiser
                            .send(PAGE, PAGE, Map.of("date", date, "names", "codes"))
                            .path())
                    .isEqualTo(PAGE);
            assertThat(served.ledger.event().deletion().promised().orElseThrow().date())
                    .hasToString(date);
            Guest captain = served.captain("N");
            for (String page : List.of("/captain/squad", "/captain/film", "/captain/past", "/conditions")) {
                assertThat(captain.get(page).text())
                        .as(page)
                        .contains("this is deleted: players' names and birth years");
            }
            assertThat(served.stranger().get("/conditions").text())
                    .contains("this is deleted: players' names and birth years");
            for (Guest other : List.of(captain, served.stranger(), served.as(Role.DESK))) {
                assertThat(other.get(PAGE).status()).isEqualTo(403);
                other.post(ERASE, Map.of("name", "x"));
            }
            assertThat(served.ledger.held().isNothing()).isFalse();
        }
    }

    @Test
    void a_day_that_cannot_be_is_refused_with_its_reason_and_what_was_typed_stays() {
        try (Served served = served()) {
            Guest organiser = served.as(Role.ORGANISER);
            Guest.Got before = organiser.send(PAGE, PAGE, Map.of("date", Days.DATE.toString(), "names", "codes"));
            assertThat(before.status()).isEqualTo(422);
            assertThat(before.text()).contains("Choose a later day");
            assertThat(before.body()).contains(Days.DATE.toString());
            assertThat(organiser
                            .send(PAGE, PAGE, Map.of("date", "", "names", "codes"))
                            .status())
                    .isEqualTo(422);
            assertThat(organiser
                            .send(
                                    PAGE,
                                    PAGE,
                                    Map.of("date", Days.DATE.plusDays(900).toString(), "names", "codes"))
                            .text())
                    .contains("too far off");
        }
    }

    @Test
    void on_that_day_the_service_deletes_by_itself_and_says_so() {
        try (Served served = served()) {
            Guest organiser = served.as(Role.ORGANISER);
            Guest captain = served.captain("N");
            promise(served, 20, NamesKept.INITIALS);
            served.at(daysAfter(19));
            served.service.eraseWhatIsDue();
            assertThat(served.stranger().get("/club/N").text()).contains("Ada Plantedname");
            served.at(daysAfter(20));
            served.service.eraseWhatIsDue();
            assertThat(served.ledger.held().isNothing()).isTrue();
            assertThat(served.stranger().get("/club/N").text())
                    .contains("Ada P.")
                    .doesNotContain("Plantedname");
            assertThat(served.stranger().get("/tie/A1").text())
                    .as("results stay")
                    .contains("11");
            assertThat(captain.get("/captain/squad").status())
                    .as("personal links end")
                    .isEqualTo(403);
            assertThat(organiser.get(PAGE).text())
                    .contains("Private data were deleted on", "Nothing private is held any more")
                    .doesNotContain("Delete now");
            assertThat(organiser.get("/log").text())
                    .contains("All personal links but the organisers' were ended, and private data deleted");
            long seq = served.ledger.event().seq();
            served.service.eraseWhatIsDue();
            assertThat(served.ledger.event().seq()).as("once is enough").isEqualTo(seq);
        }
    }

    @Test
    void what_the_service_notes_by_itself_does_not_come_back_once_it_was_deleted() {
        Days day = Days.oneTie().opened("A1");
        try (Served served = Served.of(day, Days.moment("10:05"))) {
            promise(served, 20, NamesKept.CODES);
            served.at(daysAfter(20));
            Event before = served.ledger.event();
            served.service.eraseWhatIsDue();
            Forecaster late = new Forecaster(served.ledger);
            late.changed(before);
            late.changed(served.ledger.event());
            assertThat(served.ledger.held().isNothing()).isTrue();
        }
    }

    @Test
    void an_organiser_deletes_earlier_by_the_events_name_and_only_once_the_event_is_over() {
        try (Served served = served()) {
            Guest organiser = served.as(Role.ORGANISER);
            String name = served.ledger.event().about().orElseThrow().name();
            assertThat(organiser.send(PAGE, ERASE, Map.of("name", name)).text()).contains("until it is over");
            served.at(daysAfter(1));
            Guest.Got wrong = organiser.send(PAGE, ERASE, Map.of("name", "another"));
            assertThat(wrong.status()).isEqualTo(422);
            assertThat(wrong.text()).contains("Write the name of the event exactly like this: " + name);
            assertThat(organiser.send(PAGE, ERASE, Map.of("name", "")).status()).isEqualTo(422);
            assertThat(served.ledger.held().isNothing()).isFalse();
            assertThat(organiser.send(PAGE, ERASE, Map.of("name", name)).path()).isEqualTo(PAGE);
            assertThat(served.ledger.held().isNothing()).isTrue();
            assertThat(served.ledger.directory().people()).isEmpty();
        }
    }

    @Test
    void a_captain_deletes_early_what_is_noted_about_one_player() {
        try (Served served = served()) {
            served.noted(
                    "N",
                    new PrivateNote.ChemistryJudged(
                            Pair.of("N1", "N2"), 1, OptionalDouble.empty(), java.util.Optional.empty()));
            Guest captain = served.captain("N");
            assertThat(captain.send("/captain/squad", "/captain/squad/forget", Map.of("forget-player", ""))
                            .status())
                    .isEqualTo(422);
            assertThat(served.captain("S")
                            .post("/captain/squad/forget", Map.of("forget-player", "N1"))
                            .status())
                    .isEqualTo(422);
            assertThat(captain.send("/captain/squad", "/captain/squad/forget", Map.of("forget-player", "N1"))
                            .path())
                    .isEqualTo("/captain/squad");
            assertThat(served.ledger.privateOf(ClubId.of("N")).forms()).isEmpty();
            assertThat(served.ledger.privateOf(ClubId.of("N")).chemistry()).isEmpty();
            assertThat(served.ledger.directory().people()).as("the name stays").isNotEmpty();
        }
    }
}
