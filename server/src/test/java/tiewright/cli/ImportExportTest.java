package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.PlayerId;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.TieId;
import tiewright.http.Service;
import tiewright.ledger.Ledger;
import tiewright.ledger.PrivateAnswer;
import tiewright.ledger.PrivateRequest;
import tiewright.ledger.Request;
import tiewright.plainfiles.FilmNotes;
import tiewright.plainfiles.PastNotes;

/** The demo event through a real data folder and out again. */
class ImportExportTest {
    private static final String DEMO = Path.of("..", "demo-data", "event").toString();

    @TempDir
    private Path temp;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void what_comes_out_is_what_went_in_and_comes_out_again() throws IOException {
        assertThat(run("import", DEMO, "--data", at("data"))).as(err.toString()).isZero();
        assertThat(out.toString()).contains("Brought in Tarrowick Harbour Club Day: 8 clubs, 64 players, 16 ties.");
        assertThat(run("export", at("first"), "--data", at("data")))
                .as(err.toString())
                .isZero();
        Map<String, String> first = texts("first");
        assertThat(first).doesNotContainKey("chemistry.csv");
        assertThat(first.get("players.csv")).doesNotContain("form");
        for (String file :
                List.of("event.csv", "ties.csv", "sheets.csv", "rubbers.csv", "results.csv", "past-results.csv")) {
            assertThat(first.get(file)).as(file).isEqualTo(Files.readString(Path.of(DEMO, file)));
        }
        assertThat(run("import", at("first"), "--data", at("again")))
                .as(err.toString())
                .isZero();
        assertThat(run("export", at("second"), "--data", at("again")))
                .as(err.toString())
                .isZero();
        assertThat(texts("second")).isEqualTo(first);
    }

    @Test
    void a_second_event_and_a_full_folder_are_refused() {
        assertThat(run("import", DEMO, "--data", at("data"))).as(err.toString()).isZero();
        assertThat(run("import", DEMO, "--data", at("data"))).isEqualTo(2);
        assertThat(err.toString()).contains("There is already an event here: Tarrowick Harbour Club Day.");
        assertThat(run("export", DEMO, "--data", at("data"))).isEqualTo(2);
        assertThat(err.toString()).contains("is not empty: give a new folder");
        assertThat(run("export", at("out"), "--data", at("nowhere"))).isEqualTo(2);
        assertThat(temp.resolve("nowhere")).doesNotExist();
    }

    @Test
    void nothing_of_a_folder_with_faults_is_brought_in() throws IOException {
        Path folder = Files.createDirectory(temp.resolve("broken"));
        for (String file : List.of("event.csv", "conditions.csv", "ties.csv")) {
            Files.copy(Path.of(DEMO, file), folder.resolve(file));
        }
        assertThat(run("import", folder.toString(), "--data", at("data"))).isEqualTo(2);
        assertThat(err.toString()).contains("clubs.csv:1: the file is missing, and this needs it");
        assertThat(temp.resolve("data")).doesNotExist();
    }

    @Test
    void an_event_that_was_never_described_cannot_be_exported() throws IOException {
        Ledger.open(temp.resolve("data"), Clock.systemUTC()).close();
        assertThat(run("export", at("out"), "--data", at("data"))).isEqualTo(4);
        assertThat(temp.resolve("out")).doesNotExist();
    }

    @Test
    void what_a_club_noted_needs_its_link_once_it_has_one() throws IOException {
        assertThat(run("import", DEMO, "--data", at("data"))).as(err.toString()).isZero();
        assertThat(run("export", at("before"), "--data", at("data"), "--club", "KS"))
                .as(err.toString())
                .isZero();
        assertThat(texts("before").get("chemistry.csv"))
                .isEqualTo(
                        "player_1,player_2,extra,extra_sd,rule\nKS1,KS3,1.5,1,together\nKS2,KS6,-1,1.5,\nKS4,KS8,0.5,2,together\n");
        assertThat(texts("before").get("players.csv"))
                .contains("KS1,KS,Maren Oksholt,1,4,2,,,,yes,no\n")
                .contains("OL1,OL,Kwame Adufor,1,,,,,,yes,no\n");
        issue("L1", "KS", "the captain's secret");
        assertThat(run("export", at("without"), "--data", at("data"), "--club", "KS"))
                .isEqualTo(2);
        assertThat(run("export", at("wrong"), "--data", at("data"), "--club", "KS", "--link", "a guess"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("What KS noted is for its captain");
        assertThat(run(
                        "export",
                        at("with"),
                        "--data",
                        at("data"),
                        "--club",
                        "KS",
                        "--link",
                        "http://hall/enter/the captain's secret"))
                .as(err.toString())
                .isZero();
        assertThat(texts("with")).isEqualTo(texts("before"));
    }

    @Test
    void promises_of_playing_time_go_out_with_the_own_clubs_link_alone_and_come_in_again() throws IOException {
        assertThat(run("import", DEMO, "--data", at("data"))).as(err.toString()).isZero();
        issue("L1", "KS", "the captain's secret");
        issue("L2", "WH", "another captain's secret");
        try (Ledger ledger = Ledger.open(temp.resolve("data"), Clock.systemUTC())) {
            keep(ledger, "KS", new PrivateNote.RubbersPromised(PlayerId.of("KS8"), 2));
        }
        assertThat(run("export", at("plain"), "--data", at("data")))
                .as(err.toString())
                .isZero();
        assertThat(run(
                        "export",
                        at("rival"),
                        "--data",
                        at("data"),
                        "--club",
                        "WH",
                        "--link",
                        "another captain's secret"))
                .isZero();
        for (String folder : List.of("plain", "rival")) {
            assertThat(texts(folder).get("players.csv").lines().findFirst().orElseThrow())
                    .doesNotContain("promised");
        }
        assertThat(run("export", at("own"), "--data", at("data"), "--club", "KS", "--link", "the captain's secret"))
                .isZero();
        List<String> players = texts("own").get("players.csv").lines().toList();
        assertThat(players.get(0)).endsWith(",deputy,promised");
        assertThat(players)
                .filteredOn(line -> line.startsWith("KS8,"))
                .singleElement()
                .asString()
                .endsWith(",2");
        assertThat(players.stream().skip(1).filter(line -> !line.startsWith("KS8,")))
                .allMatch(line -> line.endsWith(","));
        assertThat(run("import", at("own"), "--data", at("again")))
                .as(err.toString())
                .isZero();
        assertThat(run("export", at("second"), "--data", at("again"), "--club", "KS"))
                .isZero();
        assertThat(texts("second")).isEqualTo(texts("own"));
    }

    @Test
    void a_promise_that_is_no_number_of_rubbers_is_named_with_its_line() throws IOException {
        for (String typed : List.of("-1", "1.5", "all", "100")) {
            Path folder = Files.createDirectories(temp.resolve("promised " + typed));
            for (String file : List.of("event.csv", "conditions.csv", "clubs.csv")) {
                Files.copy(Path.of(DEMO, file), folder.resolve(file));
            }
            Files.writeString(
                    folder.resolve("players.csv"),
                    "player,club,name,promised\nKS1,KS,Maren,0\nKS2,KS,Pia," + typed + "\n");
            assertThat(run("check", folder.toString())).isEqualTo(2);
            assertThat(out.toString() + err)
                    .contains("players.csv:3: promised: ")
                    .doesNotContain("players.csv:2:");
        }
    }

    @Test
    void film_is_brought_in_by_a_club_alone_and_goes_out_with_its_link_alone() throws IOException {
        assertThat(run("import", DEMO, "--data", at("data"))).as(err.toString()).isZero();
        assertThat(err.toString())
                .contains(
                        "games.csv was looked at and not brought in: film notes belong to one club alone."
                                + " Its captain gives the file to the service on the page /captain/film.",
                        "rallies.csv was looked at and not brought in");
        issue("L1", "KS", "the captain's secret");
        issue("L2", "WH", "another captain's secret");
        give("data", "KS", Path.of(DEMO));
        assertThat(run("export", at("plain"), "--data", at("data")))
                .as(err.toString())
                .isZero();
        assertThat(run(
                        "export",
                        at("rival"),
                        "--data",
                        at("data"),
                        "--club",
                        "WH",
                        "--link",
                        "another captain's secret"))
                .isZero();
        for (String folder : List.of("plain", "rival")) {
            assertThat(texts(folder)).doesNotContainKeys("games.csv", "rallies.csv");
        }
        assertThat(run("export", at("own"), "--data", at("data"), "--club", "KS", "--link", "the captain's secret"))
                .isZero();
        for (String file : List.of("games.csv", "rallies.csv")) {
            assertThat(texts("own").get(file)).isEqualTo(Files.readString(Path.of(DEMO, file)));
        }
        assertThat(run("import", at("own"), "--data", at("again")))
                .as(err.toString())
                .isZero();
        give("again", "KS", temp.resolve("own"));
        assertThat(run("export", at("second"), "--data", at("again"), "--club", "KS"))
                .isZero();
        assertThat(texts("second")).isEqualTo(texts("own"));
    }

    @Test
    void a_clubs_own_earlier_games_go_out_with_its_link_alone_and_feed_the_commands_on_that_folder()
            throws IOException {
        assertThat(run("import", DEMO, "--data", at("data"))).as(err.toString()).isZero();
        issue("L1", "KS", "the captain's secret");
        issue("L2", "WH", "another captain's secret");
        assertThat(run("export", at("before"), "--data", at("data"), "--club", "KS", "--link", "the captain's secret"))
                .isZero();
        String rows =
                "date,home_1,home_2,away_1,away_2,home,away,format,match,best_of\n2026-05-02,KS1,KS2,Somebody,Another,11,2,side-out-11,m1,3\n";
        try (Ledger ledger = Ledger.open(temp.resolve("data"), Clock.systemUTC())) {
            keep(
                    ledger,
                    "KS",
                    new PrivateNote.GameGiven(
                            ClubId.of("KS"), 1, PastNotes.read(rows).games().get(0)));
        }
        assertThat(run("export", at("plain"), "--data", at("data")))
                .as(err.toString())
                .isZero();
        assertThat(run(
                        "export",
                        at("rival"),
                        "--data",
                        at("data"),
                        "--club",
                        "WH",
                        "--link",
                        "another captain's secret"))
                .isZero();
        for (String folder : List.of("plain", "rival")) {
            assertThat(texts(folder)).doesNotContainKey("own-past-results.csv");
            assertThat(texts(folder).values()).noneMatch(text -> text.contains("Somebody"));
        }
        assertThat(run("export", at("own"), "--data", at("data"), "--club", "KS", "--link", "the captain's secret"))
                .isZero();
        assertThat(texts("own").get("own-past-results.csv")).isEqualTo(rows);
        assertThat(Commands.run("ratings", at("own"), "--csv").out())
                .isNotEqualTo(Commands.run("ratings", at("before"), "--csv").out());
        assertThat(run("import", at("own"), "--data", at("again")))
                .as(err.toString())
                .isZero();
        assertThat(err.toString())
                .contains("own-past-results.csv was looked at and not brought in", "on the page /captain/past");
    }

    /** Those of the invented day name none; the columns come and go with what is in them. */
    @Test
    void rubbers_of_earlier_games_come_in_and_go_out() throws IOException {
        Path folder = Files.createDirectory(temp.resolve("rubbers"));
        try (Stream<Path> files = Files.list(Path.of(DEMO))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        String rows = "date,home_1,home_2,away_1,away_2,home,away,format,match,best_of\n"
                + "2026-05-02,KS1,KS2,WH1,WH2,11,2,side-out-11,semi-final,3\n"
                + "2026-05-02,WH1,WH2,KS1,KS2,11,9,side-out-11,semi-final,\n"
                + "2026-05-03,KS1,KS2,Somebody,Another,11,2,side-out-11,,\n";
        Files.writeString(folder.resolve("past-results.csv"), rows);
        assertThat(run("import", at("rubbers"), "--data", at("data")))
                .as(err.toString())
                .isZero();
        assertThat(run("export", at("out"), "--data", at("data")))
                .as(err.toString())
                .isZero();
        assertThat(texts("out").get("past-results.csv")).isEqualTo(rows);
    }

    /**
     * Twin days that differ only in what one club keeps for itself and in what the advice wrote down: every export but that club's
     * own is the same, byte for byte.
     */
    @Test
    void no_export_but_the_own_clubs_differs_by_what_a_club_keeps_or_the_advice_wrote_down() throws IOException {
        ClubId club = ClubId.of("KS");
        for (String data : List.of("quiet", "busy")) {
            assertThat(run("import", DEMO, "--data", at(data)))
                    .as(err.toString())
                    .isZero();
            issue(data, "L1", "KS", "the captain's secret");
            issue(data, "L2", "WH", "another captain's secret");
        }
        give("busy", "KS", Path.of(DEMO));
        try (Ledger ledger = Ledger.open(temp.resolve("busy"), Clock.systemUTC())) {
            keep(
                    ledger,
                    "KS",
                    new PrivateNote.FormJudged(PlayerId.of("KS1"), OptionalDouble.of(7.25), OptionalDouble.of(1.5)),
                    new PrivateNote.RubbersPromised(PlayerId.of("KS8"), 2),
                    new PrivateNote.GameGiven(
                            club,
                            1,
                            PastNotes.read(
                                            "date,home_1,home_2,away_1,away_2,home,away,format\n2026-05-02,KS1,KS2,X,Y,11,2,side-out-11")
                                    .games()
                                    .get(0)),
                    new PrivateNote.Forecast(TieId.of("A-1-1"), club, Optional.of(RubberNo.of(1)), 0.6125, 1, 0));
            assertThat(ledger.forecasts(club)).isNotEmpty();
        }
        for (String data : List.of("quiet", "busy")) {
            assertThat(run("export", at(data + "-plain"), "--data", at(data)))
                    .as(err.toString())
                    .isZero();
            assertThat(run(
                            "export",
                            at(data + "-rival"),
                            "--data",
                            at(data),
                            "--club",
                            "WH",
                            "--link",
                            "another captain's secret"))
                    .isZero();
            assertThat(run(
                            "export",
                            at(data + "-own"),
                            "--data",
                            at(data),
                            "--club",
                            "KS",
                            "--link",
                            "the captain's secret"))
                    .isZero();
        }
        assertThat(texts("busy-plain")).isEqualTo(texts("quiet-plain"));
        assertThat(texts("busy-rival")).isEqualTo(texts("quiet-rival"));
        assertThat(texts("busy-own")).as("only the club's own tells").isNotEqualTo(texts("quiet-own"));
        assertThat(texts("busy-own").values())
                .as("and not even that has the forecasts")
                .noneMatch(text -> text.contains("0.6125"));
    }

    private void give(String data, String club, Path folder) throws IOException {
        ClubId id = ClubId.of(club);
        try (Ledger ledger = Ledger.open(temp.resolve(data), Clock.systemUTC())) {
            FilmNotes notes = FilmNotes.read(
                    Files.readString(folder.resolve("games.csv")),
                    Files.readString(folder.resolve("rallies.csv")),
                    FilmNotes.Known.of(ledger.event()));
            keep(
                    ledger,
                    club,
                    notes.games().stream().map(game -> game.keptFor(id)).toArray(PrivateNote[]::new));
        }
    }

    private static void keep(Ledger ledger, String club, PrivateNote... notes) {
        ClubId id = ClubId.of(club);
        Actor captain = new Actor(Role.CAPTAIN, Optional.of(id), "captain", "test");
        PrivateRequest request = PrivateRequest.of(id, UUID.randomUUID().toString(), captain);
        assertThat(ledger.decide(request, (event, noted, by) -> PrivateDecision.Kept.of(notes)))
                .isEqualTo(new PrivateAnswer.Done(false));
    }

    private void issue(String name, String club, String secret) {
        issue("data", name, club, secret);
    }

    private void issue(String data, String name, String club, String secret) {
        Decision issue = (event, given) -> Decision.Accepted.of(new SetUpFact.LinkIssued(
                name,
                Role.CAPTAIN,
                Optional.of(ClubId.of(club)),
                Optional.empty(),
                "captain of " + club,
                Service.hash(secret)));
        try (Ledger ledger = Ledger.open(temp.resolve(data), Clock.systemUTC())) {
            ledger.decide(Request.of("issue " + name, Actor.of(Role.ORGANISER, "L0")), issue);
        }
    }

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private String at(String name) {
        return temp.resolve(name).toString();
    }

    private Map<String, String> texts(String folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(temp.resolve(folder))) {
            for (Path file : files.toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return texts;
    }
}
