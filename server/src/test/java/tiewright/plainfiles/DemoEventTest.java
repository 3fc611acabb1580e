package tiewright.plainfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.TieProgress;
import tiewright.standings.PoolTables;
import tiewright.standings.Row;
import tiewright.standings.Standings;

/** The demo event is sound, and what its files add up to was worked out with a pencil. */
class DemoEventTest {
    static final Path DEMO = Path.of("..", "demo-data", "event");
    private static EventFolder folder;
    private static Event event;

    @BeforeAll
    static void read() {
        folder = EventFolder.read(DEMO);
        event = folder.event();
    }

    @Test
    void has_no_fault() {
        assertThat(folder.faults()).isEmpty();
    }

    @Test
    void has_eight_clubs_of_eight_and_two_minors_by_birth_year() {
        assertThat(event.clubs()).hasSize(8);
        assertThat(event.clubs().keySet())
                .allSatisfy(club -> assertThat(event.squad(club)).hasSize(8));
        int year = event.about().orElseThrow().date().getYear();
        assertThat(event.players().keySet().stream()
                        .filter(player -> folder.directory().isMinor(player, year)))
                .containsExactlyInAnyOrder(PlayerId.of("KS8"), PlayerId.of("OL7"));
    }

    /**
     * Pool A. KS beat MP 3-1 (11-5 11-8 9-11 11-6: 42-30), WH beat CL 3-2 (11-9 7-11 12-10 8-11, decider 11-7: 49-48),
     * CL beat MP 3-1 (11-4 8-11 11-8 11-5: 41-28); KS v WH is not finished. KS, WH, CL have one win each; rubbers 3-1 = +2,
     * 3-2 = +1, 5-4 = +1, so KS is first; two are left, and WH beat CL.
     */
    @Test
    void pool_a_is_as_worked_out_by_hand() {
        assertThat(table("A"))
                .containsExactly(
                        "1 KS 1-0 3-1 42-30", "2 WH 1-0 3-2 49-48", "3 CL 1-1 5-4 89-77", "4 MP 0-2 2-6 58-83");
    }

    /**
     * Pool B. OL beat TG 4-0 (11-4 11-7 11-3, walkover 11-0: 44-14), GR beat LQ 3-1 (11-6 9-11 11-9 11-9: 42-35; the third is a
     * retirement of LQ, who had 9, so 11 for GR); the other ties are not finished. One win each: rubbers +4 before +2;
     * no win: -2 before -4.
     */
    @Test
    void pool_b_is_as_worked_out_by_hand() {
        assertThat(table("B"))
                .containsExactly(
                        "1 OL 1-0 4-0 44-14", "2 GR 1-0 3-1 42-35", "3 LQ 0-1 1-3 35-42", "4 TG 0-1 0-4 14-44");
    }

    private static List<String> table(String pool) {
        return Standings.of(PoolTables.input(event, pool)).rows().stream()
                .map(DemoEventTest::line)
                .toList();
    }

    private static String line(Row row) {
        return row.place() + " " + row.club() + " " + row.tiesWon() + "-" + row.tiesLost() + " " + row.rubbersWon()
                + "-" + row.rubbersLost() + " " + row.pointsFor() + "-" + row.pointsAgainst();
    }

    @Test
    void round_1_is_played_and_one_tie_of_round_2_waits_for_its_decider() {
        assertThat(event.ties().values().stream().filter(tie -> tie.pool().isPresent() && tie.round() == 1))
                .hasSize(4)
                .allMatch(tie -> event.progress(tie).finished());
        TieProgress level = event.progress(event.tie(TieId.of("A-2-2")).orElseThrow());
        assertThat(level.awaitsDecider()).isTrue();
        assertThat(level.left()).containsExactly(RubberNo.DECIDER);
        assertThat(level.won(Side.HOME)).isEqualTo(2);
        assertThat(event.ties().values().stream()
                        .filter(tie -> event.progress(tie).awaitsDecider()))
                .hasSize(1);
    }

    @Test
    void everybody_who_played_is_here_and_plays_once_a_tie() {
        for (Tie tie : event.ties().values()) {
            List<PlayerId> named = tie.opened().entrySet().stream()
                    .filter(rubber -> !rubber.getKey().isDecider())
                    .flatMap(rubber -> java.util.stream.Stream.of(
                            rubber.getValue().home(), rubber.getValue().away()))
                    .flatMap(java.util.Optional::stream)
                    .flatMap(pair -> java.util.stream.Stream.of(pair.first(), pair.second()))
                    .toList();
            assertThat(named).as(tie.id().code()).doesNotHaveDuplicates().doesNotContainAnyElementsOf(folder.away());
        }
        assertThat(folder.away()).containsExactly(PlayerId.of("TG7"));
    }

    /** SHA-256 over the words of docs/plain-files.md, made here from the rows themselves. */
    @Test
    void every_receipt_is_that_of_its_sheet() throws IOException, GeneralSecurityException {
        Map<String, StringBuilder> texts = new LinkedHashMap<>();
        Map<String, String> receipts = new LinkedHashMap<>();
        for (String line :
                Files.readAllLines(DEMO.resolve("sheets.csv")).stream().skip(1).toList()) {
            String[] cell = line.split(",", -1);
            String key = cell[0] + " " + cell[1] + (cell[2].equals("D") ? " D" : "");
            texts.computeIfAbsent(key, any -> new StringBuilder(cell[7] + "\n" + cell[0] + "\n" + cell[1] + "\n"))
                    .append(cell[2])
                    .append(',')
                    .append(cell[3])
                    .append(',')
                    .append(cell[4])
                    .append('\n');
            receipts.put(key, cell[6]);
        }
        assertThat(receipts).hasSize(18);
        MessageDigest sha = MessageDigest.getInstance("SHA-256");
        texts.forEach((sheet, text) -> assertThat(
                        HexFormat.of().formatHex(sha.digest(text.toString().getBytes(StandardCharsets.UTF_8))))
                .as(sheet)
                .isEqualTo(receipts.get(sheet)));
    }

    @Test
    void has_past_results_for_every_player() {
        List<PrivateNote.PastGame> past = folder.notes(PrivateNote.PastGame.class);
        assertThat(past).hasSizeGreaterThanOrEqualTo(50);
        assertThat(event.players().keySet())
                .allSatisfy(player -> assertThat(past)
                        .anyMatch(game -> List.of(game.home1(), game.home2(), game.away1(), game.away2())
                                .contains(player.code())));
    }

    /** Who serves and who scores by the walk of the scoring room, held to published rules in its own tests. */
    @Test
    void the_filmed_games_lead_rally_by_rally_to_the_scores_of_their_cards() throws IOException {
        FilmNotes film = FilmNotes.read(
                Files.readString(DEMO.resolve("games.csv")),
                Files.readString(DEMO.resolve("rallies.csv")),
                FilmNotes.Known.of(event));
        assertThat(film.faults()).isEmpty();
        assertThat(film.games()).hasSize(2).allSatisfy(game -> {
            Tie tie = event.tie(game.film().counted().tie().orElseThrow()).orElseThrow();
            RubberNo rubber = game.film().counted().rubber().orElseThrow();
            assertThat(tie.card(rubber).score(rubber).orElseThrow().games())
                    .containsExactly(game.film().replay().score());
            assertThat(game.film().card()).contains(game.film().replay().score());
            assertThat(tie.opened().get(rubber).home())
                    .contains(game.film().counted().one());
            assertThat(tie.opened().get(rubber).away())
                    .contains(game.film().counted().two());
            assertThat(game.film().counted().rallies())
                    .as("no rally after the last point")
                    .isEqualTo(game.rallies().split("\n").length - 2);
        });
        assertThat(FilmNotes.file(
                        PlainFile.RALLIES,
                        film.games().stream()
                                .map(game -> game.keptFor(ClubId.of("KS")))
                                .toList()))
                .isEqualTo(Files.readString(DEMO.resolve("rallies.csv")));
    }

    @Test
    void the_seeds_meet_only_in_the_knockout_and_the_two_clubs_of_one_town_are_apart() {
        assertThat(event.pools().get("A")).contains(ClubId.of("KS")).doesNotContain(ClubId.of("OL"), ClubId.of("LQ"));
    }
}
