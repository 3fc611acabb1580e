package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.TieId;

/**
 * What lies how far from a thumb: taps, swipes and pixels on a phone of 390 x 844 over the invented event. The figures are the
 * project's own aims and no published ones.
 */
class ReachIT {
    private static final int WIDTH = 390;
    private static final int HEIGHT = 844;
    private static final int FRAME = 120;

    private Served served;
    private int taps;
    private int swipes;
    private Chromium browser;
    private Map<Role, String> links;

    @BeforeEach
    void the_invented_event_is_served() throws IOException {
        served = Served.demo(Instant.parse("2026-11-28T10:52:00Z"));
        Optional<ClubId> own = Optional.of(ClubId.of("KS"));
        links = Map.of(
                Role.PUBLIC, served.service.url(),
                Role.CAPTAIN, served.link(Role.CAPTAIN, own, Optional.empty(), "captain"),
                Role.PLAYER, served.link(Role.PLAYER, own, Optional.of(PlayerId.of("KS1")), "player"),
                Role.VOLUNTEER, served.link(Role.VOLUNTEER, Optional.empty(), Optional.empty(), "court 3"),
                Role.DESK, served.link(Role.DESK, Optional.empty(), Optional.empty(), "desk"),
                Role.REFEREE, served.link(Role.REFEREE, Optional.empty(), Optional.empty(), "referee"),
                Role.ORGANISER, served.link(Role.ORGANISER, Optional.empty(), Optional.empty(), "organiser"));
        browser = Chromium.start().at(served.service.url());
        browser.phone(WIDTH, HEIGHT);
    }

    @AfterEach
    void closed() {
        if (browser != null) {
            browser.close();
        }
        served.close();
    }

    private double number(String script) {
        return ((Number) browser.js("return " + script)).doubleValue();
    }

    private double height(String css) {
        return number("document.querySelector('" + css + "').getBoundingClientRect().height");
    }

    @Test
    void the_frame_takes_at_most_120_pixels_for_everybody() {
        links.forEach((role, link) -> {
            browser.enter(link);
            assertThat(height(".head") + height(".places")).as(role.code()).isLessThanOrEqualTo(FRAME);
            assertThat(number("document.querySelector('main').getBoundingClientRect().top"))
                    .as(role.code())
                    .isLessThan(FRAME / 2.0);
        });
    }

    @Test
    void everybody_has_four_places_and_the_same_on_every_page_of_theirs() {
        links.forEach((role, link) -> {
            browser.enter(link);
            List<String> first = browser.texts(".places li:not(.often) a");
            assertThat(first).as(role.code()).hasSize(4);
            for (String page : pages()) {
                browser.go(page);
                assertThat(browser.has("h1")).as(page).isTrue();
                assertThat(browser.texts(".places li:not(.often) a"))
                        .as(role.code() + " " + page)
                        .hasSameSizeAs(first);
                assertThat(browser.texts(".places [aria-current], .all-pages [aria-current]"))
                        .as(role.code() + " " + page + " says where one is")
                        .isNotEmpty();
            }
        });
    }

    @SuppressWarnings("unchecked")
    private List<String> pages() {
        return (List<String>)
                browser.js("return [...document.querySelectorAll('.all-pages a')].map(a => a.getAttribute('href'))");
    }

    @Test
    void whoever_may_stop_a_court_finds_hurt_in_the_head() {
        for (Role role : List.of(Role.CAPTAIN, Role.DESK, Role.REFEREE, Role.ORGANISER)) {
            browser.enter(links.get(role));
            browser.tap(".head .hurt");
            assertThat(browser.path()).isEqualTo("/hurt");
        }
        browser.enter(links.get(Role.PUBLIC));
        assertThat(browser.has(".head .hurt")).isFalse();
    }

    /** Presses what a thumb can reach without scrolling; anything below or behind the bar counts as a swipe. */
    private void reach(String css) {
        double lowest = number("document.querySelector(\"" + css + "\").getBoundingClientRect().bottom");
        double bar = number(
                "(document.querySelector('.thumb') ?? document.querySelector('.places')).getBoundingClientRect().top");
        boolean inBar = browser.has(".thumb " + css) || browser.has(".places " + css);
        if (lowest > (inBar ? HEIGHT : bar)) {
            swipes++;
        }
        browser.tap(css);
        taps++;
    }

    private void start(Role role) {
        browser.enter(links.get(role));
        taps = 0;
        swipes = 0;
    }

    private Exchange exchange(ExchangeId id) {
        return served.ledger.event().exchange(id);
    }

    @Test
    void the_last_sheet_is_sealed_again_with_three_taps_and_no_swipe() {
        start(Role.CAPTAIN);
        reach("a[href='/captain/sheet/A-3-2']");
        reach("[data-from-last]");
        reach("[data-seal]");
        browser.waitFor(".sheet", "sealed once");
        assertThat(served.ledger.ownSheet(ExchangeId.sheets(TieId.of("A-3-2")), ClubId.of("KS")))
                .isPresent();
        assertThat(List.of(taps, swipes)).as("taps, swipes").containsExactly(3, 0);
    }

    @Test
    void a_proposal_is_sealed_with_four_taps_and_no_swipe() {
        start(Role.CAPTAIN);
        reach("a[href='/captain/sheet/A-3-2']");
        reach(".three a[href='/captain/proposal/A-3-2']");
        reach(".pairs + .action button");
        reach("[data-seal]");
        browser.waitFor(".sheet", "sealed once");
        assertThat(served.ledger.ownSheet(ExchangeId.sheets(TieId.of("A-3-2")), ClubId.of("KS")))
                .isPresent();
        assertThat(List.of(taps, swipes)).as("taps, swipes").containsExactly(4, 0);
    }

    @Test
    void the_answer_of_a_captains_page_stands_in_the_first_screen() {
        browser.enter(links.get(Role.CAPTAIN));
        for (String css : List.of(".now .button-main", ".now:nth-of-type(2)", ".row .strip")) {
            assertThat(bottom(css)).as(css).isLessThanOrEqualTo(HEIGHT - 64.0);
        }
        browser.go("/captain/proposal/A-3-2");
        for (String css : List.of(".chance", ".pairs", ".pairs + .action .button-main")) {
            assertThat(bottom(css)).as(css).isLessThanOrEqualTo(HEIGHT - 64.0);
        }
        assertThat(number("document.documentElement.scrollHeight")).isLessThanOrEqualTo(3.0 * HEIGHT);
        browser.go("/captain/sheet/A-3-2");
        for (String css : List.of(".slot:nth-of-type(4)", ".chips", ".three")) {
            assertThat(bottom(css)).as(css).isLessThanOrEqualTo(HEIGHT - 64.0);
        }
    }

    @Test
    void no_page_of_a_captain_is_longer_than_three_screens_with_its_folds_closed() {
        browser.enter(links.get(Role.CAPTAIN));
        for (String page : List.of(
                "/captain",
                "/captain/squad",
                "/captain/past",
                "/captain/film",
                "/captain/film/note?tie=A-2-2&rubber=1",
                "/captain/film/note?game=KS-film-1",
                "/captain/film/agreement",
                "/captain/film/find?player=KS1&ending=forced",
                "/captain/film/counts",
                "/captain/rota",
                "/captain/links",
                "/captain/day",
                "/captain/playing-time",
                "/captain/record",
                "/captain/record/tried",
                "/captain/proposal/A-3-2",
                "/captain/sheet/A-3-2",
                "/captain/decider/A-2-2",
                "/tie/A-1-1",
                "/tie/A-2-2",
                "/tie/A-3-2")) {
            browser.go(page);
            assertThat(number("document.documentElement.scrollHeight")).as(page).isLessThanOrEqualTo(3.0 * HEIGHT);
            assertThat(browser.sideways()).as(page + " with its folds open").isEmpty();
        }
    }

    private double bottom(String css) {
        return number("document.querySelector(\"" + css + "\").getBoundingClientRect().bottom");
    }

    @Test
    void a_pair_for_the_decider_is_sealed_with_four_taps_and_no_swipe() {
        start(Role.CAPTAIN);
        reach("a[href='/captain/decider/A-2-2']");
        reach("[data-player='KS1']");
        reach("[data-player='KS4']");
        reach("[data-seal]");
        browser.waitFor(".sheet", "sealed once");
        assertThat(exchange(ExchangeId.decider(TieId.of("A-2-2"))).home().isIn())
                .isTrue();
        assertThat(List.of(taps, swipes)).as("taps, swipes").containsExactly(4, 0);
    }

    /** Taps come as fast as they can: no thumb is faster, and one of 1.5 s a tap waits longer for nothing. */
    @Test
    void on_a_network_two_seconds_away_no_choice_is_lost() {
        browser.enter(links.get(Role.CAPTAIN));
        browser.go("/captain/sheet/A-3-2");
        browser.latency(2000);
        for (int player = 8; player >= 1; player--) {
            browser.tap("[data-player='KS" + player + "']");
        }
        browser.tap("[data-seal]");
        browser.waitFor(".sheet", "sealed once");
        assertThat(served.ledger
                        .ownSheet(ExchangeId.sheets(TieId.of("A-3-2")), ClubId.of("KS"))
                        .orElseThrow()
                        .sheet()
                        .pairs()
                        .values())
                .containsExactly(pair(8, 7), pair(6, 5), pair(4, 3), pair(2, 1));
    }

    private static Optional<Pair> pair(int one, int other) {
        return Optional.of(Pair.of("KS" + one, "KS" + other));
    }

    private List<String> places() {
        return browser.texts("[data-seat]");
    }

    @Test
    void places_and_rubbers_are_changed_over_by_two_taps_each_and_a_reload_loses_nothing() {
        browser.enter(links.get(Role.CAPTAIN));
        browser.go("/captain/sheet/A-3-2");
        for (int player = 1; player <= 8; player++) {
            browser.tap("[data-player='KS" + player + "']");
        }
        List<String> first = places();
        assertThat(first).doesNotContain("").doesNotHaveDuplicates();
        browser.tap("[data-seat='sheet-1-first']");
        browser.tap("[data-seat='sheet-3-second']");
        assertThat(places().get(0)).isEqualTo(first.get(5));
        assertThat(places().get(5)).isEqualTo(first.get(0));
        browser.tap("[data-rubber='2']");
        browser.tap("[data-rubber='4']");
        assertThat(places().subList(2, 4)).isEqualTo(first.subList(6, 8));
        List<String> now = places();
        browser.go("/captain/sheet/A-3-2");
        assertThat(places()).isEqualTo(now);
        browser.tap("[data-seat='sheet-1-first']");
        assertThat(places().get(0)).isEqualTo("next: tap a name");
        browser.tap("[data-undo]");
        assertThat(places()).isEqualTo(now);
        browser.tap("[data-cover]");
        assertThat(places()).containsOnly("placed");
    }

    @Test
    void everybody_finds_the_own_next_rubber_with_two_taps_and_a_player_with_none() {
        start(Role.PUBLIC);
        reach("a[href='/clubs']");
        browser.tap("a[href='/player/KS1']");
        taps++;
        assertThat(taps).isEqualTo(2);
        assertThat(browser.path()).isEqualTo("/player/KS1");
        browser.enter(links.get(Role.PLAYER));
        for (String css : List.of(".now", ".next .court", ".next .when", ".next dl")) {
            assertThat(bottom(css)).as(css).isLessThanOrEqualTo(HEIGHT - 64.0);
        }
    }

    @Test
    void the_front_page_shows_the_chosen_club_first_and_remembers_it() {
        browser.enter(links.get(Role.PUBLIC));
        browser.go("/?club=KS");
        assertThat(bottom(".now")).isLessThanOrEqualTo(HEIGHT / 2.0);
        assertThat(bottom(".court-row:nth-of-type(3)")).isLessThanOrEqualTo(HEIGHT - 64.0);
        browser.go("/");
        assertThat(browser.path()).isEqualTo("/?club=KS");
        browser.go("/?club=");
        browser.go("/");
        assertThat(browser.has(".now")).isFalse();
    }

    @Test
    void back_leads_where_one_came_from() {
        browser.enter(links.get(Role.CAPTAIN));
        browser.go("/tables");
        browser.go("/captain/film");
        browser.go("/captain/film/counts");
        assertThat(browser.js("return document.querySelector('.back a').getAttribute('href')"))
                .isEqualTo("/captain/film");
        browser.enter(links.get(Role.CAPTAIN));
        browser.go("/tables");
        browser.go("/captain/film/counts");
        assertThat(browser.js("return document.querySelector('.back a').getAttribute('href')"))
                .isEqualTo("/tables");
    }
}
