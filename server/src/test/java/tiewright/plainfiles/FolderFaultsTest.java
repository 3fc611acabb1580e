package tiewright.plainfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** Every fault of a folder at once, each by file, line and column; near them what is no fault. */
class FolderFaultsTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void a_sound_folder() throws IOException {
        file(
                "event.csv",
                "key,value",
                "name,Day",
                "date,2026-11-28",
                "venue,Hall",
                "time_zone,Europe/Dublin",
                "starts,09:00");
        file("conditions.csv", "setting,value", "preset,Club day", "rubbers,2");
        file("clubs.csv", "club,name", "A,Aa", "B,Bb");
        file(
                "players.csv",
                "player,club,name",
                "a1,A,One",
                "a2,A,Two",
                "a3,A,Three",
                "a4,A,Four",
                "b1,B,Uno",
                "b2,B,Due",
                "b3,B,Tre",
                "b4,B,Quattro");
        file("ties.csv", "tie,stage,pool,round,home,away", "T,pool,P,1,A,B");
    }

    @Test
    void a_sound_folder_has_no_fault() {
        assertThat(faults()).isEmpty();
    }

    @Test
    void a_club_has_a_code_that_can_stand_in_an_address() throws IOException {
        file("clubs.csv", "club,name", "A,Aa", "B,Bb", "A wet court.,Cc");
        assertThat(faults())
                .containsExactly(
                        "clubs.csv:4: club: \"A wet court.\" cannot be the code of a club: use letters, digits and hyphens,"
                                + " a letter or digit first");
    }

    @Test
    void two_files_have_to_be_there() throws IOException {
        Files.delete(folder.resolve("event.csv"));
        Files.delete(folder.resolve("conditions.csv"));
        assertThat(faults())
                .containsExactly(
                        "event.csv:1: the file is missing; every event folder has one",
                        "conditions.csv:1: the file is missing; every event folder has one");
    }

    @Test
    void every_fault_of_every_file_is_told_at_once() throws IOException {
        file(
                "event.csv",
                "key,value",
                "name,",
                "date,28.11.2026",
                "venue,Hall",
                "time_zone,Nowhere/Land",
                "starts,9:00",
                "colour,red",
                "venue,Hall");
        file("clubs.csv", "club,name,colour", "A,Aa,red", "A,Again,blue", "B,,");
        file("players.csv", "player,club,name,born_year,from,until,present", "a1,C,One,19,12:00,11:00,maybe");
        assertThat(faults())
                .containsExactly(
                        "event.csv:2: value: this value is missing",
                        "event.csv:3: value: \"28.11.2026\" is not a date such as 2026-05-30",
                        "event.csv:5: value: \"Nowhere/Land\" is not a time zone such as Europe/Lisbon",
                        "event.csv:6: value: \"9:00\" is not a time such as 13:20",
                        "event.csv:7: key: unknown key \"colour\"",
                        "event.csv:8: key: \"venue\" is listed here twice",
                        "clubs.csv:1: colour: unknown column",
                        "clubs.csv:3: club: the club A is listed here twice",
                        "clubs.csv:4: name: this value is missing",
                        "players.csv:2: club: there is no club C in clubs.csv",
                        "players.csv:2: born_year: \"19\" is not a whole number from 1900 to 2100",
                        "players.csv:2: until: until 11:00 is not after from 12:00",
                        "players.csv:2: present: \"maybe\" is not one of yes, no");
    }

    @Test
    void columns_come_in_any_order_and_are_each_there_once() throws IOException {
        file("clubs.csv", "name,club", "Aa,A", "Bb,B");
        assertThat(faults()).isEmpty();
        file("clubs.csv", "name,club,club", "Aa,A,A", "Bb,B,B");
        assertThat(faults()).containsExactly("clubs.csv:1: club: this column is here twice");
        file("clubs.csv", "name", "Aa");
        assertThat(faults()).containsExactly("clubs.csv:1: club: this column is missing");
    }

    @Test
    void a_row_of_the_wrong_length_is_told_once() throws IOException {
        file("ties.csv", "tie,stage,pool,round,home,away", "T,pool,P,1,A");
        assertThat(faults()).containsExactly("ties.csv:2: this row has 5 values, the header has 6 columns");
    }

    @Test
    void a_byte_order_mark_and_carriage_returns_are_no_fault() throws IOException {
        Files.writeString(folder.resolve("clubs.csv"), "\uFEFFclub,name\r\nA,Aa\r\nB,Bb\r\n");
        assertThat(faults()).isEmpty();
    }

    @Test
    void a_reference_into_an_absent_file_is_no_fault_but_nothing_to_bring_in() throws IOException {
        for (String file : List.of("clubs.csv", "players.csv", "ties.csv")) {
            Files.delete(folder.resolve(file));
        }
        file("results.csv", "tie,rubber,home,away,how", "T,1,11,5,played");
        file("chemistry.csv", "player_1,player_2,extra", "a1,a2,1");
        assertThat(faults()).isEmpty();
        assertThat(EventFolder.read(folder).missingForImport())
                .extracting(FolderFault::file)
                .containsExactly("players.csv", "ties.csv");
    }

    @Test
    void conditions_are_named_and_legal() throws IOException {
        file(
                "conditions.csv",
                "setting,value",
                "preset,Club days",
                "preset,Timed",
                "rubbers,13",
                "scoring,side-out",
                "colour,red",
                "level_teams,points-won>lots",
                "level_teams,lots",
                "decider,any",
                "rest_minutes,10",
                "tie_points,0/1/2");
        assertThat(faults())
                .containsExactly(
                        "conditions.csv:2: value: there is no preset \"Club days\"; choose Club day, Strict order, Everyone plays or Timed",
                        "conditions.csv:4: value: rubbers cannot be \"13\"; it is a whole number from 1 to 12",
                        "conditions.csv:5: value: scoring cannot be \"side-out\"; it is a scoring format such as side-out-11 or rally-21-cap-30",
                        "conditions.csv:6: setting: there is no setting \"colour\"",
                        "conditions.csv:8: setting: \"level_teams\" is listed here twice",
                        "conditions.csv:9: value: decider cannot be \"any\"; it is one of none, any-two, one-from-each, singles-turns",
                        "conditions.csv:11: value: tie_points cannot be \"0/1/2\"; it is win/draw/loss such as 2/1/0, rubbers, games, or both such as rubbers+2/1/0");
    }

    @Test
    void chemistry_is_of_two_players_of_one_club() throws IOException {
        file(
                "chemistry.csv",
                "player_1,player_2,extra,extra_sd,rule",
                "a1,a1,1,,",
                "a1,b1,1,,",
                "a1,a2,much,-1,close",
                "a2,a1,0,,",
                "a1,a2,0,,",
                "a1,z,0,,");
        assertThat(faults())
                .containsExactly(
                        "chemistry.csv:2: player_2: a pair has two different players",
                        "chemistry.csv:3: player_2: a1 and b1 play for different clubs",
                        "chemistry.csv:4: extra: \"much\" is not a number from -50 to 50, with a decimal point",
                        "chemistry.csv:4: extra_sd: \"-1\" is not a number from 0 to 50, with a decimal point",
                        "chemistry.csv:4: rule: \"close\" is not one of together, apart",
                        "chemistry.csv:5: player_2: the pair a2, a1 is listed here twice",
                        "chemistry.csv:6: player_2: the pair a1, a2 is listed here twice",
                        "chemistry.csv:7: player_2: there is no player z in players.csv");
    }

    @Test
    void a_rating_out_of_range_and_a_doubt_of_nothing_are_refused_with_their_reason() throws IOException {
        file(
                "players.csv",
                "player,club,name,form,form_sd",
                "a1,A,Ann,51,0",
                "a2,A,Bo,2,0.5",
                "b1,B,Cy,-50.5,51",
                "b2,B,Di,,0.0");
        file("chemistry.csv", "player_1,player_2,extra,extra_sd", "a1,a2,60,0");
        String nothing = "the doubt must be more than 0 and at most 50: nobody is quite sure, so 0 is not accepted";
        assertThat(faults())
                .containsExactly(
                        "players.csv:2: form: \"51\" is not a number from -50 to 50, with a decimal point",
                        "players.csv:2: form_sd: " + nothing,
                        "players.csv:4: form: \"-50.5\" is not a number from -50 to 50, with a decimal point",
                        "players.csv:4: form_sd: \"51\" is not a number from 0 to 50, with a decimal point",
                        "players.csv:5: form_sd: " + nothing,
                        "chemistry.csv:2: extra: \"60\" is not a number from -50 to 50, with a decimal point",
                        "chemistry.csv:2: extra_sd: " + nothing);
    }

    @Test
    void ties_know_their_pools_and_where_their_clubs_come_from() throws IOException {
        file(
                "ties.csv",
                "tie,stage,pool,round,home,away,home_from,away_from",
                "T,pool,,1,A,A,,",
                "T,pool,P,0,A,B,,",
                "U,cup,P,1,A,B,,",
                "F,knockout,,2,,,winner-S,loser-F",
                "S,knockout,,1,,,winner-F,Q-1",
                "V,knockout,P,1,A,,,",
                "W,knockout,,1,A,,,P-",
                "X,knockout,,1,A,,,P-2");
        assertThat(faults())
                .containsExactly(
                        "ties.csv:2: pool: a tie in a pool must name its pool",
                        "ties.csv:2: away: a club cannot play itself",
                        "ties.csv:3: round: \"0\" is not a whole number from 1 to 99",
                        "ties.csv:3: tie: the tie T is listed here twice",
                        "ties.csv:4: stage: \"cup\" is not one of pool, knockout, placing",
                        "ties.csv:5: home_from: tie F waits for its own result",
                        "ties.csv:5: away_from: tie F waits for its own result",
                        "ties.csv:6: home_from: tie S waits for its own result",
                        "ties.csv:6: away_from: there is no pool Q in ties.csv",
                        "ties.csv:7: pool: a knockout tie is not in a pool",
                        "ties.csv:7: away: name the club, or in away_from where it comes from",
                        "ties.csv:8: away_from: a source is written A-1, winner-SF1 or loser-SF1");
    }

    @Test
    void results_are_scores_that_can_be() throws IOException {
        file(
                "results.csv",
                "tie,rubber,home,away,how",
                "T,1,11,10,played",
                "T,3,11,5,played",
                "T,2,11,5,won",
                "T,2,,5,played",
                "Z,1,11,5,played",
                "T,D,11,5,played",
                "T,2,11,0,walkover-home");
        assertThat(faults())
                .containsExactly(
                        "results.csv:2: home: 11-10 is not finished: against that many points the winner needs 12.",
                        "results.csv:3: rubber: a rubber is 1 to 2, or D for the decider",
                        "results.csv:4: how: \"won\" is not one of played, retired-home, retired-away, walkover-home, walkover-away, void",
                        "results.csv:5: home: this value is missing",
                        "results.csv:6: tie: there is no tie Z in ties.csv",
                        "results.csv:8: how: the side that did not play cannot have more points");
    }

    @Test
    void a_decider_stands_only_after_level_rubbers() throws IOException {
        file("results.csv", "tie,rubber,home,away,how", "T,1,11,5,played", "T,2,11,5,played", "T,D,11,5,played");
        assertThat(faults()).containsExactly("results.csv:4: rubber: the rubbers are not level but 2-0");
        file("results.csv", "tie,rubber,home,away,how", "T,1,11,5,played", "T,D,11,5,played");
        assertThat(faults()).containsExactly("results.csv:3: rubber: a decider needs the results of all 2 rubbers");
        file("results.csv", "tie,rubber,home,away,how", "T,1,11,5,played", "T,2,5,11,played", "T,D,11,5,played");
        assertThat(faults()).isEmpty();
    }

    @Test
    void several_games_of_a_rubber_are_numbered() throws IOException {
        file("conditions.csv", "setting,value", "rubbers,2", "best_of,3");
        file(
                "results.csv",
                "tie,rubber,game,home,away,how",
                "T,1,2,5,11,played",
                "T,1,1,11,5,played",
                "T,1,3,11,9,played",
                "T,2,1,11,5,played");
        assertThat(faults())
                .containsExactly("results.csv:5: home: Too few games: at least 1 more are needed, or a side retired.");
        file("results.csv", "tie,rubber,game,home,away,how", "T,1,1,11,5,played", "T,1,1,11,5,played");
        assertThat(faults()).containsExactly("results.csv:3: rubber: rubber 1 of tie T has this game twice");
    }

    @Test
    void a_result_needs_both_clubs() throws IOException {
        file("ties.csv", "tie,stage,round,home,away,away_from", "S,knockout,1,A,B,", "F,knockout,2,A,,winner-S");
        file("results.csv", "tie,rubber,home,away,how", "F,1,11,5,played");
        assertThat(faults())
                .containsExactly("results.csv:2: tie: the clubs of tie F are not both known: name them in ties.csv");
    }

    @Test
    void sheets_open_together_at_one_time_with_the_right_receipt() throws IOException {
        String secret = "ab".repeat(32);
        file(
                "sheets.csv",
                "tie,club,rubber,player_1,player_2,opened_at,receipt,secret",
                "T,A,1,a1,a2,08:45," + "0".repeat(64) + "," + secret,
                "T,A,2,a3,a4,08:46,,",
                "T,B,1,b1,,08:45,,",
                "T,B,2,b3,a4,08:45,,");
        assertThat(faults())
                .containsExactly(
                        "sheets.csv:3: opened_at: the rows of one sheet differ: above it says 08:45",
                        "sheets.csv:4: player_2: a pair has two players, an empty side none",
                        "sheets.csv:5: player_2: a4 plays for A, not for B");
        file(
                "sheets.csv",
                "tie,club,rubber,player_1,player_2,opened_at,receipt,secret",
                "T,A,1,a2,a1,08:45," + "0".repeat(64) + "," + secret,
                "T,A,2,,,08:45,,",
                "T,B,1,b1,b2,08:45,,",
                "T,B,1,b3,b4,08:45,,");
        // by sha256sum of printf 'SECRET\nT\nA\n1,a1,a2\n2,,\n'
        assertThat(faults())
                .containsExactly(
                        "sheets.csv:2: receipt: this is not the receipt of this sheet with this secret, which is 40c6f64b57fbbd9fd38b25802fbdb2897e7f99266098ba85864547d55b7f7af5",
                        "sheets.csv:5: rubber: rubber 1 of this sheet is listed here twice");
    }

    @Test
    void one_opened_sheet_alone_is_half_an_opening() throws IOException {
        file("sheets.csv", "tie,club,rubber,player_1,player_2,opened_at", "T,A,1,a1,a2,08:45");
        assertThat(faults())
                .containsExactly(
                        "sheets.csv:2: club: the sheet of the other club is missing: both are opened together");
        file("rubbers.csv", "tie,rubber,home_1,home_2,away_1,away_2", "T,1,a1,a2,b1,b2");
        assertThat(faults()).isEmpty();
    }

    @Test
    void a_pair_that_played_instead_of_the_named_one_was_replaced() throws IOException {
        file("sheets.csv", "tie,club,rubber,player_1,player_2,opened_at", "T,A,1,a1,a2,08:45", "T,B,1,b1,b2,08:45");
        file("rubbers.csv", "tie,rubber,home_1,home_2,away_1,away_2", "T,1,a1,a2,b1,b4");
        EventFolder read = EventFolder.read(folder);
        assertThat(read.faults()).isEmpty();
        assertThat(read.event()
                        .tie(TieId.of("T"))
                        .orElseThrow()
                        .opened()
                        .get(RubberNo.of(1))
                        .away()
                        .orElseThrow())
                .hasToString("b1+b4");
    }

    @Test
    void withdrawals_and_lots_name_what_is_there() throws IOException {
        file("withdrawals.csv", "club,after_tie,treatment", "A,T,kept", "A,U,keep", "B,T,", "B,,annul");
        file("lots.csv", "pool,draw,club,witness", "P,1,A,Eve", "P,1,A,Eve", "P,,B,", "P,1,B,");
        assertThat(faults())
                .containsExactly(
                        "withdrawals.csv:2: treatment: \"kept\" is not one of annul, keep, award",
                        "withdrawals.csv:3: after_tie: there is no tie U in ties.csv",
                        "withdrawals.csv:3: club: the club A is listed here twice",
                        "withdrawals.csv:5: club: the club B is listed here twice",
                        "lots.csv:3: club: the club A is in this draw twice",
                        "lots.csv:4: draw: this value is missing");
    }

    @Test
    void film_notes_are_looked_at_for_their_form() throws IOException {
        file(
                "games.csv",
                "game,tie,rubber,format,first_server,right_1,left_1,right_2,left_2,card_1,card_2",
                "g,T,1,side-out-11,a3,a1,a2,b1,b2,11,x",
                "g,,1,rally,a1,a1,a1,b1,b2,,");
        file(
                "rallies.csv",
                "game,rally,server,ending,player,third,signal",
                "g,1,a1,earned,,soft,stay",
                "g,1,a3,missed,b1,hop,left",
                "h,1,,replay,,,");
        assertThat(faults())
                .containsExactly(
                        "games.csv:2: first_server: a3 does not play this game",
                        "games.csv:2: card_2: \"x\" is not a whole number from 0 to 999",
                        "games.csv:3: tie: a rubber belongs to a tie: name the tie",
                        "games.csv:3: format: \"rally\" is not a scoring format such as side-out-11",
                        "games.csv:3: left_1: a1 is on the court twice",
                        "games.csv:3: game: the game g is listed here twice",
                        "rallies.csv:2: player: this value is missing",
                        "rallies.csv:3: rally: rally 1 of game g is listed here twice",
                        "rallies.csv:3: ending: \"missed\" is not one of earned, forced, gave, replay, unsure",
                        "rallies.csv:3: server: a3 does not play this game",
                        "rallies.csv:3: third: \"hop\" is not one of soft, hard, lob, none",
                        "rallies.csv:3: signal: \"left\" is not one of stay, switch, crossed",
                        "rallies.csv:4: game: there is no game h in games.csv");
    }

    @Test
    void earlier_games_ended_as_their_format_allows() throws IOException {
        file(
                "past-results.csv",
                "date,home_1,home_2,away_1,away_2,home,away,format",
                "2026-01-02,a1,a2,a stranger,b1,11,5,side-out-11",
                "2026-02-30,a1,a1,b1,b2,10,5,rally",
                "2026-01-02,a1,a2,b1,b2,15,14,rally-15");
        assertThat(faults())
                .containsExactly(
                        "past-results.csv:3: date: \"2026-02-30\" is not a date such as 2026-05-30",
                        "past-results.csv:3: home_2: a1 is listed in this game twice",
                        "past-results.csv:3: format: \"rally\" is not a scoring format such as side-out-11",
                        "past-results.csv:4: home: 15-14 is not finished: against that many points the winner needs 16.");
    }

    @Test
    void a_rubber_of_earlier_games_is_best_of_an_odd_number() throws IOException {
        file(
                "past-results.csv",
                "date,home_1,home_2,away_1,away_2,home,away,format,match,best_of",
                "2026-01-02,a1,a2,a stranger,b1,11,5,side-out-11,m1,3",
                "2026-01-02,a1,a2,a stranger,b1,11,5,side-out-11,m1,",
                "2026-01-02,a1,a2,a stranger,b1,11,5,side-out-11,m1,2",
                "2026-01-02,a1,a2,a stranger,b1,11,5,side-out-11,m1,11",
                "2026-01-02,a1,a2,a stranger,b1,11,5,side-out-11,,three",
                "2026-01-02,a1,a2,a stranger,b1,11,5,side-out-11," + "m".repeat(201) + ",3");
        assertThat(faults())
                .containsExactly(
                        "past-results.csv:4: best_of: a rubber is best of an odd number of games, not of 2",
                        "past-results.csv:5: best_of: \"11\" is not a whole number from 1 to 9",
                        "past-results.csv:6: best_of: \"three\" is not a whole number from 1 to 9",
                        "past-results.csv:7: match: this is longer than 200 characters");
    }

    @Test
    void yes_and_no_are_read_and_empty_means_here() throws IOException {
        file("players.csv", "player,club,name,present,deputy", "a1,A,One,no,yes", "a2,A,Two,yes,", "a3,A,Three,,no");
        EventFolder read = EventFolder.read(folder);
        assertThat(read.away()).containsExactly(PlayerId.of("a1"));
        assertThat(read.event().squad(ClubId.of("A")))
                .extracting(tiewright.event.Player::deputy)
                .containsExactly(true, false, false);
    }

    private void file(String name, String... lines) throws IOException {
        Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n");
    }

    private List<String> faults() {
        return EventFolder.read(folder).faults().stream()
                .map(FolderFault::toString)
                .toList();
    }
}
