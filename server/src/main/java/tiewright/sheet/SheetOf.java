package tiewright.sheet;

import tiewright.event.ClubId;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.ExchangeId;

/**
 * Whose sheet it is, and of which exchange.
 *
 * @param directory what the players state to play in: it decides who may stand where rubbers have kinds
 */
public record SheetOf(Event event, ExchangeId exchange, ClubId club, Directory directory) {}
