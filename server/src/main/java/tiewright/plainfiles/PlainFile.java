package tiewright.plainfiles;

import java.util.ArrayList;
import java.util.List;

/** The files of the event folder and their columns, in the order in which they are read and written. */
public enum PlainFile {
    EVENT("event.csv", "key,value"),
    CONDITIONS("conditions.csv", "setting,value"),
    CLUBS("clubs.csv", "club,name,town?,seed?"),
    PLAYERS(
            "players.csv",
            "player,club,name,rank?,form?,form_sd?,born_year?,from?,until?,present?,deputy?,promised?,plays?"),
    CHEMISTRY("chemistry.csv", "player_1,player_2,extra,extra_sd?,rule?"),
    COURTS("courts.csv", "court,from,until"),
    TIES("ties.csv", "tie,stage,pool?,round,home?,away?,home_from?,away_from?,start?,court?"),
    SHEETS("sheets.csv", "tie,club,rubber,player_1?,player_2?,opened_at,receipt?,secret?"),
    RUBBERS("rubbers.csv", "tie,rubber,home_1?,home_2?,away_1?,away_2?"),
    RESULTS("results.csv", "tie,rubber,home,away,how,game?"),
    WITHDRAWALS("withdrawals.csv", "club,after_tie?,treatment?"),
    LOTS("lots.csv", "pool,draw,club,witness?"),
    GAMES("games.csv", "game,tie?,rubber?,format,first_server,right_1,left_1,right_2,left_2,card_1?,card_2?"),
    RALLIES(
            "rallies.csv",
            "game,rally,server?,ending,player,where?,serve?,return?,third?,third_to?,signal?,call?,call_by?,call_end?,mark?,film_time?"),
    PAST_RESULTS("past-results.csv", "date,home_1,home_2,away_1,away_2,home,away,format,match?,best_of?"),
    OWN_PAST_RESULTS("own-past-results.csv", "date,home_1,home_2,away_1,away_2,home,away,format,match?,best_of?");

    private final String fileName;
    private final List<String> columns = new ArrayList<>();
    private final List<String> required = new ArrayList<>();

    PlainFile(String fileName, String columns) {
        this.fileName = fileName;
        for (String column : columns.split(",")) {
            String name = column.replace("?", "");
            this.columns.add(name);
            if (name.equals(column)) {
                required.add(name);
            }
        }
    }

    public String fileName() {
        return fileName;
    }

    /** Every column, in the order in which it is written. */
    public List<String> columns() {
        return List.copyOf(columns);
    }

    /** Columns that may stand in the file and say nothing: what {@code rules} writes beside each value. */
    List<String> readOver() {
        return this == CONDITIONS ? List.of("heading", "default", "words") : List.of();
    }

    /** Those that the header must have. */
    List<String> required() {
        return List.copyOf(required);
    }
}
