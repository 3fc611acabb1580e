package tiewright.timetable;

import java.util.List;
import java.util.Optional;
import tiewright.event.RubberNo;

/**
 * What is placed as a whole: a tie, or one rubber of it.
 *
 * @param number counted from 0
 * @param tie its place in the list of ties
 * @param width courts that it takes
 * @param minutes how long it takes them, turnover included
 * @param pin where it stays
 */
record Piece(int number, int tie, List<RubberNo> rubbers, int width, int minutes, Optional<Pin> pin) {}
