package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.ReasonTable;

/** How good the advice to one club was, for its captain's eyes only. */
public record OwnRecordView(List<String> said, ReasonTable bands, ReasonTable forecasts) {}
