package tiewright.plainfiles;

import java.util.List;

/** The files of the event folder and their columns. */
public enum PlainFile {
  EVENT("event.csv", "key,value", ""),
  CONDITIONS("conditions.csv", "setting,value", ""),
  CLUBS("clubs.csv", "club,name", "town,seed"),
  PLAYERS("players.csv", "player,club,name", "rank,form,form_sd,born_year,from,until,present,deputy"),
  TIES("ties.csv", "tie,stage,round", "pool,home,away,home_from,away_from,start,court"),
  RESULTS("results.csv", "tie,rubber,home,away,how", "game"),
  WITHDRAWALS("withdrawals.csv", "club", "after_tie,treatment"),
  SHEETS("sheets.csv", "tie,club,rubber", "player_1,player_2,opened_at,receipt,secret");

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
