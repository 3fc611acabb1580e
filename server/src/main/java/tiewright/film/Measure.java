package tiewright.film;

/** What is counted in a filmed game. Rallies that nobody won, or of which nobody knows, are counted for nobody. */
public enum Measure {
  /** Of a pair: points. */
  SCORE("score"),
  /** Of a pair: rallies won, of those that somebody won. */
  RALLIES_WON("rallies_won"),
  /** Of a pair: rallies won, of those in which it served. */
  WON_SERVING("won_serving"),
  /** Of a pair: rallies won, of those in which it received. */
  WON_RECEIVING("won_receiving"),
  /** Of a player: rallies that the own side won, of those in which the player served. */
  WON_OWN_SERVE("won_own_serve"),
  /** Of a player: winners, of the rallies that somebody won. */
  EARNED("earned"),
  /** Of a player: errors under pressure, of the rallies that somebody won. */
  FORCED("forced"),
  /** Of a player: errors on a ball usually made, of the rallies that somebody won. */
  GAVE("gave"),
  /** Of a player: serves missed, of those whose end is noted or that were returned. */
  SERVE_MISSED("serve_missed"),
  /** Of a player: returns missed, of the serves to this player that were not missed. */
  RETURN_MISSED("return_missed"),
  /** Of a player: deep returns, of those that are noted as deep or short. */
  DEEP_RETURN("deep_return"),
  /** Of a player: rallies won after the own deep return. */
  WON_AFTER_DEEP_RETURN("won_after_deep_return"),
  /** Of a player: rallies won after the own short return. */
  WON_AFTER_SHORT_RETURN("won_after_short_return"),
  /** Of a pair: rallies won after its soft third ball. */
  WON_AFTER_SOFT_THIRD("won_after_soft_third"),
  /** Of a pair: rallies won after its hard third ball. */
  WON_AFTER_HARD_THIRD("won_after_hard_third"),
  /** Of a player: third balls to this player, of those to the own side. */
  THIRD_TO("third_to"),
  /** Of a pair: rallies won after it signalled to stay. */
  WON_AFTER_STAY("won_after_stay"),
  /** Of a pair: rallies won after it signalled to switch. */
  WON_AFTER_SWITCH("won_after_switch"),
  /** Of the game: rallies noted. */
  RALLIES("rallies"),
  /** Of the game: rallies played again. */
  REPLAYED("replayed"),
  /** Of the game: rallies of which nobody knows who won them. */
  UNSURE("unsure");

  private final String code;

  Measure(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
