package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which links of a club read what it keeps for itself, and what it has sealed. */
class ClubLinksTest {
    private static final ClubId N = ClubId.of("N");
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));

    private final Days day = Days.oneTie().at("08:00").by(Days.organiser());

    private void made(String... names) {
        for (String name : names) {
            day.fact(new SetUpFact.LinkIssued(name, Role.CAPTAIN, Optional.of(N), Optional.empty(), name, "h" + name));
        }
    }

    private Days by(String link) {
        return day.by(new Actor(Role.CAPTAIN, Optional.of(N), link, "", Optional.of(link)));
    }

    private void seals(String link) {
        by(link).fact(new ExchangeFact.SheetSealed(SHEETS, N, "a".repeat(64), false));
    }

    private boolean isLetIn(String link) {
        return day.event().entries().isLetIn(day.event().links().get(link), day.now());
    }

    private boolean reads(String link) {
        return day.event().mayRead(day.event().links().get(link), SHEETS, day.now());
    }

    private boolean isSwapped() {
        return day.event()
                .exchange(SHEETS)
                .home()
                .sealings()
                .inPlace()
                .orElseThrow()
                .isUnconfirmed();
    }

    @Test
    void the_first_of_a_club_are_let_in_and_one_that_others_make_later_is_not() {
        made("L1", "L2");
        day.at("08:01");
        made("L3");
        assertThat(isLetIn("L1")).isTrue();
        assertThat(isLetIn("L2")).isTrue();
        day.at("20:00");
        assertThat(isLetIn("L3")).isFalse();
        by("L2").fact(new SetUpFact.LinkLetIn("L3"));
        assertThat(isLetIn("L3")).isTrue();
    }

    @Test
    void one_that_the_club_makes_itself_is_let_in_and_one_made_by_another_clubs_captain_is_not() {
        made("L1");
        by("L1").at("09:00");
        made("L2");
        day.by(Days.captain("S"));
        made("L3");
        assertThat(isLetIn("L2")).isTrue();
        assertThat(isLetIn("L3")).isFalse();
    }

    @Test
    void where_none_is_left_a_new_one_is_let_in_ten_minutes_after_the_notice() {
        made("L1");
        day.at("09:00");
        made("L2");
        day.at("10:00").fact(new SetUpFact.LinkRevoked("L1"));
        assertThat(day.event().entries().linksOf(N).letInBy(day.event().links().get("L2")))
                .contains(Days.moment("10:10"));
        assertThat(isLetIn("L2")).isFalse();
        day.at("10:09:59");
        assertThat(isLetIn("L2")).isFalse();
        day.at("10:10");
        assertThat(isLetIn("L2")).isTrue();
        assertThat(isLetIn("L1")).isFalse();
    }

    @Test
    void one_made_after_the_last_was_ended_waits_from_when_it_was_made() {
        made("L1");
        day.at("10:00").fact(new SetUpFact.LinkRevoked("L1")).at("10:30");
        made("L2");
        assertThat(day.event().entries().linksOf(N).letInBy(day.event().links().get("L2")))
                .contains(Days.moment("10:30").plus(Duration.ofMinutes(10)));
    }

    @Test
    void a_sealed_sheet_is_read_by_links_that_were_there_and_let_in() {
        made("L1", "L2");
        seals("L1");
        assertThat(reads("L1")).isTrue();
        assertThat(reads("L2")).isTrue();
        day.by(Days.organiser()).at("09:00");
        made("L3");
        by("L1").fact(new SetUpFact.LinkLetIn("L3"));
        assertThat(reads("L3")).isFalse();
        assertThat(isSwapped()).isFalse();
    }

    @Test
    void a_link_that_nobody_let_in_reads_nothing_but_what_it_sealed_itself() {
        made("L1");
        day.at("09:00");
        made("L2", "L3");
        seals("L1");
        assertThat(reads("L2")).isFalse();
        seals("L2");
        assertThat(reads("L2")).isTrue();
        assertThat(reads("L3")).isFalse();
        assertThat(reads("L1")).isTrue();
        assertThat(isSwapped()).isTrue();
    }

    @Test
    void a_sheet_in_place_of_one_that_the_link_cannot_have_read_is_told_until_an_older_link_confirms() {
        made("L1");
        seals("L1");
        by("L1").at("09:00");
        made("L2");
        seals("L2");
        assertThat(isSwapped()).isTrue();
        seals("L2");
        assertThat(isSwapped()).isTrue();
        seals("L1");
        assertThat(isSwapped()).isFalse();
        seals("L2");
        assertThat(isSwapped()).isFalse();
    }

    @Test
    void a_sheet_that_went_back_is_sealed_anew_by_anybody_of_the_club() {
        made("L1");
        seals("L1");
        by("L1").at("09:00");
        made("L2");
        day.by(Days.desk()).fact(new ExchangeFact.SheetReturned(SHEETS, N, "Wrong tie."));
        seals("L2");
        assertThat(isSwapped()).isFalse();
    }

    @Test
    void a_player_reads_by_a_link_that_was_there() {
        made("L1");
        for (String name : new String[] {"L2", "L3"}) {
            day.by(Days.organiser())
                    .fact(new SetUpFact.LinkIssued(
                            name, Role.PLAYER, Optional.of(N), Optional.of(PlayerId.of("N1")), name, "h" + name));
            if (name.equals("L2")) {
                seals("L1");
            }
        }
        assertThat(reads("L2")).isTrue();
        assertThat(reads("L3")).isFalse();
    }

    @Test
    void what_is_brought_in_without_any_link_is_read_by_the_first() {
        day.by(Days.captain("N")).fact(new ExchangeFact.SheetSealed(SHEETS, N, "a".repeat(64), false));
        day.by(Days.organiser());
        made("L1");
        day.at("09:00");
        made("L2");
        by("L1").fact(new SetUpFact.LinkLetIn("L2"));
        assertThat(reads("L1")).isTrue();
        assertThat(reads("L2")).isFalse();
    }

    @Test
    void those_in_use_that_nobody_let_in_wait() {
        made("L1");
        day.at("09:00");
        made("L2", "L3");
        day.fact(new SetUpFact.LinkRevoked("L3"));
        assertThat(day.event().entries().linksOf(N).waiting())
                .extracting(Link::name)
                .containsExactly("L2");
        by("L1").fact(new SetUpFact.LinkLetIn("L2"));
        assertThat(day.event().entries().linksOf(N).waiting()).isEmpty();
        assertThat(day.event().entries().link(new Actor(Role.CAPTAIN, Optional.of(N), "x", "", Optional.of("L2"))))
                .map(Link::name)
                .contains("L2");
        assertThat(day.event().entries().link(Days.desk())).isEmpty();
    }

    @Test
    void the_end_of_a_link_that_was_never_let_in_makes_nobody_wait_longer() {
        made("L1");
        day.at("09:00");
        made("L2", "L3");
        day.at("10:00").fact(new SetUpFact.LinkRevoked("L1"));
        day.at("10:05").fact(new SetUpFact.LinkRevoked("L2"));
        assertThat(day.event().entries().linksOf(N).letInBy(day.event().links().get("L3")))
                .contains(Days.moment("10:10"));
    }
}
