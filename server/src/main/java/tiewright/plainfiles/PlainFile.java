package tiewright.plainfiles;

import java.util.List;

/** The files of the event folder and their columns. */
public enum PlainFile {
  EVENT("event.csv", "key,value", ""),
  CONDITIONS("conditions.csv", "setting,value", ""),
  CLUBS("clubs.csv", "club,name", "town,seed"),
  PLAYERS("players.csv", "player,club,name", "rank,form,form_sd,born_year,from,until,present,deputy"),
  CHEMISTRY("chemistry.csv", "player_1,player_2,extra", "extra_sd,rule"),
  COURTS("courts.csv", "court,from,until", ""),
  TIES("ties.csv", "tie,stage,round", "pool,home,away,home_from,away_from,start,court"),
  RESULTS("results.csv", "tie,rubber,home,away,how", "game"),
  WITHDRAWALS("withdrawals.csv", "club", "after_tie,treatment"),
  SHEETS("sheets.csv", "tie,club,rubber", "player_1,player_2,opened_at,receipt,secret"),
  RUBBERS("rubbers.csv", "tie,rubber", "home_1,home_2,away_1,away_2"),
  GAMES("games.csv", "game,format,first_server,right_1,left_1,right_2,left_2", "tie,rubber,card_1,card_2"),
  RALLIES("rallies.csv", "game,rally,ending,player", "server,where,serve,return,third,third_to,signal,call,call_by,call_end,mark,film_time"),
  PAST_RESULTS("past-results.csv", "date,home_1,home_2,away_1,away_2,home,away,format", "");

  private final String fileName;
  private final List<String> required;
  private final List<String> optional;

  PlainFile(String fileName, String required, String optional) {
    this.fileName = fileName;
    this.required = List.of(required.split(","));
    this.optional = optional.isEmpty() ? List.of() : List.of(optional.split(","));
  }

  public String fileName() {
    return fileName;
  }

  List<String> required() {
    return required;
  }

  boolean has(String column) {
    return required.contains(column) || optional.contains(column);
  }
}
