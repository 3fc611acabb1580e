package tiewright.http.views;

import tiewright.http.pieces.ReasonTable;

/**
 * A page of the log.
 *
 * @param newer address of the page of newer entries, empty for none
 * @param older address of the page of older entries, empty for none
 */
public record LogView(ReasonTable table, String newer, String older) {}
