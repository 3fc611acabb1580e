package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.ImportEvent;

/**
 * What lies how far from a thumb: taps, swipes and pixels on a phone of 390 x 844 over the invented event. The figures are the
 * project's own aims and no published ones.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReachIT {
    private static final int WIDTH = 390;
    private static final int HEIGHT = 844;
    private static final int FRAME = 120;

    private Served served;
    private Chromium browser;
    private Map<Role, String> links;

    @BeforeAll
    void the_invented_event_is_served() throws IOException {
        served = Served.empty(Instant.parse("2026-11-28T10:52:00Z"));
        served.ask(
                Actor.of(Role.ORGANISER, "test"),
                ImportEvent.of(EventFolder.read(Path.of("..", "demo-data", "event"))));
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

    @AfterAll
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
