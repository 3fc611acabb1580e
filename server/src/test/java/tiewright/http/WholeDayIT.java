package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tiewright.cli.Commands;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.TieProgress;
import tiewright.plainfiles.FolderExport;
import tiewright.plainfiles.OwnNotes;

/**
 * A whole day of eight clubs in a real browser: an organiser, a referee, a desk, a volunteer, eight captains and eight
 * deputies, from empty data to a champion. Clubs and scores are invented; scores are drawn from a printed seed.
 */
class WholeDayIT {
    private static final List<String> CLUBS = List.of("ASH", "BIR", "CED", "DOG", "ELM", "FIR", "GOR", "HAW");
    private static final List<String> NAMES =
            List.of("Ashlark", "Birchway", "Cedar End", "Dogwood", "Elmhythe", "Firley", "Gorse Hill", "Hawkthorn");
    /** A row of a table in its text to copy: place, club, and the numbers after its name. */
    private static final Pattern ROW_AS_TEXT =
            Pattern.compile("(?m)^([0-9]+) (.+), ties ([0-9]+-[0-9]+, rubbers [0-9]+-[0-9]+, points [0-9]+-[0-9]+)$");

    private static final LocalDate DATE = LocalDate.of(2027, 5, 29);
    private static final ZoneId ZONE = ZoneId.of("Europe/Dublin");
    private static final List<String> ROUNDS = List.of("09:00", "10:30", "12:00", "13:30", "15:00");

    private final Random scores = new Random(Long.getLong("seed", 20270529L));
    private final Map<String, String> captains = new LinkedHashMap<>();
    private final Map<String, String> deputies = new LinkedHashMap<>();
    private Served served;
    private Chromium browser;
    private String organiser;
    private String referee;
    private String desk;
    private String volunteer;

    @BeforeEach
    void open() throws IOException {
        browser = Chromium.start();
        served = Served.empty(moment("07:00"));
        browser.at(served.service.url());
        browser.size(1280, 1600);
    }

    @AfterEach
    void close() {
        if (browser != null) {
            browser.close();
            served.close();
        }
    }

    private static Instant moment(String time) {
        return DATE.atTime(LocalTime.parse(time)).atZone(ZONE).toInstant();
    }

    @Test
    void from_empty_data_to_a_champion() throws IOException {
        organiser = served.link(Role.ORGANISER, Optional.empty(), Optional.empty(), "organiser");
        setUp();
        for (int round = 0; round < 3; round++) {
            play(ROUNDS.get(round), round % 2 == 0);
        }
        signTables();
        assertThat(event().tie(TieId.of("SF1")).orElseThrow().isReady()).isTrue();
        play(ROUNDS.get(3), true);
        play(ROUNDS.get(4), false);
        signEvent();
        everybodySeesTheChampion();
        tablesEqualTheCommands();
        assertThat(browser.complaints()).isEmpty();
    }

    private Event event() {
        return served.ledger.event();
    }

    private void setUp() {
        browser.enter(organiser);
        browser.go("/organiser/event");
        browser.type("name", "Hedgerow Cup");
        browser.set("date", DATE.toString());
        browser.type("venue", "Long Barn");
        browser.set("zone", ZONE.getId());
        browser.set("starts", "09:00");
        browser.set("closes", "18:00");
        browser.press("/organiser/event", "");
        browser.go("/organiser/conditions?preset=Club%20day");
        browser.press("/organiser/conditions", "Publish these conditions");
        browser.go("/organiser/courts");
        browser.type("court", "1-4");
        browser.press("/organiser/courts/add", "");
        for (int i = 0; i < CLUBS.size(); i++) {
            enterClub(CLUBS.get(i), NAMES.get(i));
        }
        browser.go("/organiser/draw");
        browser.type("pools", "2");
        browser.type("spokenSeed", "seven wet umbrellas");
        browser.type("witness", "Oona");
        browser.press("/organiser/draw", "");
        browser.go("/organiser/knockout");
        browser.type("fromEachPool", "2");
        browser.tick("thirdPlace", "yes");
        browser.type("spokenSeed", "a red bicycle");
        browser.type("witness", "Oona");
        browser.press("/organiser/knockout", "");
        times();
        links();
        assertThat(event().ties()).hasSize(16);
        assertThat(captains).hasSize(8);
        assertThat(deputies).hasSize(8);
    }

    private void enterClub(String code, String name) {
        browser.go("/organiser/clubs");
        browser.type("club", code);
        browser.type("name", name);
        browser.press("/organiser/clubs", "");
        browser.go("/organiser/club/" + code);
        for (int player = 1; player <= 8; player++) {
            browser.set(
                    "new-" + player + "-name",
                    List.of("Ada", "Bo", "Cleo", "Dara", "Eve", "Finn", "Gwen", "Huw")
                                    .get(player - 1) + " " + name);
            browser.set("new-" + player + "-rank", Integer.toString(player));
        }
        browser.press("/organiser/club/" + code + "/squad", "");
        assertThat(event().squad(ClubId.of(code))).hasSize(8);
    }

    /** Two ties at a time on two courts each; every round of a pool at once. */
    private void times() {
        browser.go("/organiser/times");
        Map<String, Integer> used = new LinkedHashMap<>();
        for (Tie tie : event().ties().values()) {
            int round = tie.stage() == tiewright.event.Stage.POOL ? tie.round() - 1 : 2 + tie.round();
            int court = used.merge(ROUNDS.get(round), 1, Integer::sum);
            browser.set("tie-" + tie.id() + "-start", ROUNDS.get(round));
            browser.set("tie-" + tie.id() + "-court", Integer.toString(court));
        }
        browser.press("/organiser/times", "");
    }

    private void links() {
        browser.go("/organiser/links");
        browser.press("/organiser/links/captains", "Make all that are missing");
        List<String> made = browser.texts(".slip .code");
        for (int i = 0; i < CLUBS.size(); i++) {
            captains.put(CLUBS.get(i), made.get(i));
        }
        for (String club : CLUBS) {
            deputies.put(club, link("captain", club, club + " deputy"));
        }
        referee = link("referee", "", "referee");
        desk = link("desk", "", "desk 1");
        volunteer = link("volunteer", "", "volunteer 1");
    }

    private String link(String role, String club, String label) {
        browser.go("/organiser/links");
        browser.open("A single link: desk, volunteer, referee, one player");
        browser.choose("role", role);
        browser.choose("club", club);
        browser.type("label", label);
        browser.press("/organiser/links/one", "");
        return browser.texts(".slip .code").get(0);
    }

    /** One round: sheets, opening, calls, cards, deciders. */
    private void play(String start, boolean byCaptains) {
        List<Tie> ties = event().ties().values().stream()
                .filter(tie ->
                        tie.start().filter(LocalTime.parse(start)::equals).isPresent())
                .toList();
        assertThat(ties).isNotEmpty().allMatch(Tie::isReady);
        served.at(moment(start).minusSeconds(40 * 60));
        for (Tie tie : ties) {
            for (Side side : Side.values()) {
                String club = tie.club(side).orElseThrow().code();
                seal(tie, club, byCaptains == (side == Side.HOME) ? captains.get(club) : deputies.get(club));
            }
        }
        browser.enter(desk);
        assertThat(browser.text()).doesNotContain("Ada", "Huw");
        served.at(moment(start).minusSeconds(15 * 60));
        assertThat(ties).allMatch(tie -> event().tie(tie.id()).orElseThrow().isOpened());
        served.at(moment(start));
        for (Tie tie : ties) {
            call(tie);
        }
        served.at(moment(start).plusSeconds(30 * 60));
        for (Tie tie : ties) {
            cards(tie);
        }
        served.at(moment(start).plusSeconds(32 * 60));
        for (Tie tie : ties) {
            if (progress(tie).awaitsDecider()) {
                decide(tie);
            }
            assertThat(progress(tie).finished()).as("tie " + tie.id()).isTrue();
        }
    }

    private TieProgress progress(Tie tie) {
        return event().progress(event().tie(tie.id()).orElseThrow());
    }

    private void seal(Tie tie, String club, String link) {
        browser.enter(link);
        browser.go("/captain/sheet/" + tie.id());
        List<String> players = new ArrayList<>(event().squad(ClubId.of(club)).stream()
                .map(player -> player.id().code())
                .toList());
        java.util.Collections.shuffle(players, scores);
        for (int rubber = 1; rubber <= 4; rubber++) {
            name("sheet-" + rubber + "-first", players.get(2 * rubber - 2));
            name("sheet-" + rubber + "-second", players.get(2 * rubber - 1));
        }
        browser.press("/captain/sheet/" + tie.id(), "Seal this sheet");
        assertThat(browser.text()).as(club + " in " + tie.id()).contains("sealed once");
    }

    /** The first sheet by hand, the others by script. */
    private void name(String id, String player) {
        if (event().envelopes().firstSealedAt().isEmpty()) {
            browser.tap("[data-player='" + player + "']");
        } else {
            browser.pick(id, player);
        }
    }

    private void call(Tie tie) {
        browser.enter(desk);
        browser.go("/desk/tie/" + tie.id());
        browser.press("/desk/tie/" + tie.id() + "/call", "Call to court");
        assertThat(event().tie(tie.id()).orElseThrow().calls())
                .as(browser.text())
                .isNotEmpty();
    }

    private void cards(Tie tie) {
        browser.enter(tie.id().code().hashCode() % 2 == 0 ? volunteer : desk);
        for (RubberNo rubber : progress(tie).left()) {
            if (!progress(tie).finished()) {
                card(tie, rubber);
            }
        }
    }

    private void card(Tie tie, RubberNo rubber) {
        String path = "/cards/" + tie.id() + "/" + rubber;
        boolean home = scores.nextBoolean();
        int loser = scores.nextInt(11);
        int winner = loser == 10 ? 12 : 11;
        browser.go(path);
        browser.type("home-1", Integer.toString(home ? winner : loser));
        browser.type("away-1", Integer.toString(home ? loser : winner));
        String won = event().club(tie.club(home ? Side.HOME : Side.AWAY)
                        .orElse(event().tie(tie.id())
                                .orElseThrow()
                                .club(home ? Side.HOME : Side.AWAY)
                                .orElseThrow()))
                .orElseThrow()
                .name();
        assertThat(browser.texts(".echo").get(0)).startsWith(won).contains(winner + "-" + loser);
        browser.press(path, won);
        assertThat(browser.path()).isIn("/cards/" + tie.id(), "/desk");
    }

    /** Both captains name a pair blind and ask for the opening; then the decider is called and its card entered. */
    private void decide(Tie tie) {
        Tie now = event().tie(tie.id()).orElseThrow();
        for (Side side : Side.values()) {
            String club = now.club(side).orElseThrow().code();
            browser.enter(captains.get(club));
            String path = "/captain/decider/" + tie.id();
            browser.go(path);
            name("sheet-D-first", event().squad(ClubId.of(club)).get(0).id().code());
            name("sheet-D-second", event().squad(ClubId.of(club)).get(3).id().code());
            browser.press(path, "Seal this pair");
            browser.press(path + "/ask", "Ask for the opening");
        }
        served.service.openWhatIsDue();
        assertThat(event().exchange(ExchangeId.decider(tie.id())).isOpened()).isTrue();
        browser.enter(desk);
        card(tie, RubberNo.DECIDER);
    }

    private void signTables() {
        browser.enter(referee);
        for (String pool : event().pools().keySet()) {
            browser.go("/organiser/tables");
            browser.type("sign-" + pool + "-by", "Referee Oona");
            sure("sign-" + pool + "-all-the-same");
            browser.press("/organiser/tables/sign/" + pool, "");
        }
        assertThat(event().signedTables()).hasSize(2);
    }

    /** Captains can still object, and the page asks before it signs. */
    private void sure(String field) {
        if (browser.has("input[name='" + field + "']")) {
            browser.tick(field, "yes");
        }
    }

    private void signEvent() {
        browser.enter(referee);
        browser.go("/organiser/tables");
        browser.type("event-by", "Referee Oona");
        sure("event-all-the-same");
        browser.press("/organiser/tables/event", "");
        assertThat(event().signed()).isPresent();
    }

    private void everybodySeesTheChampion() {
        String champion = event().club(event().signed().orElseThrow().order().get(0))
                .orElseThrow()
                .name();
        browser.enter(served.service.url() + "/");
        browser.phone(390, 844);
        for (String page : List.of("/", "/board", "/bracket", "/tables")) {
            browser.go(page);
            assertThat(browser.sideways()).as(page).isEmpty();
        }
        browser.size(1280, 1600);
        browser.go("/bracket");
        assertThat(browser.text()).contains("Champion: " + champion);
        browser.go("/tables");
        assertThat(browser.text()).contains("Final order of the event", "Final, by Referee Oona");
        assertThat(browser.text()).contains("1. " + champion + ": ", "Signed by Referee Oona at");
    }

    /** What the pages show is what the command makes of the exported folder. */
    private void tablesEqualTheCommands() throws IOException {
        Path folder = Files.createTempDirectory("tiewright-export");
        FolderExport.write(event(), served.ledger.directory(), OwnNotes.NONE, List.of(), folder);
        Commands.Ran standings = Commands.run("standings", folder, "--csv");
        assertThat(standings.status()).as(standings.err()).isZero();
        List<String> expected = standings.rows().stream()
                .map(row -> String.join(",", row.subList(0, 9)))
                .toList();
        browser.go("/tables");
        List<String> shown = new ArrayList<>();
        for (String pool : event().pools().keySet()) {
            String text = browser.js(
                            "return document.getElementById('copy-' + arguments[0] + '-text').textContent", pool)
                    .toString();
            Matcher row = ROW_AS_TEXT.matcher(text);
            while (row.find()) {
                String code = CLUBS.get(NAMES.indexOf(row.group(2)));
                String numbers = row.group(3).replaceAll("[^0-9]+", ",").replaceAll("^,|,$", "");
                shown.add(String.join(",", pool, row.group(1), code, numbers));
            }
        }
        assertThat(shown).isEqualTo(expected);
        try (var files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(path -> path.toFile().delete());
        }
    }
}
