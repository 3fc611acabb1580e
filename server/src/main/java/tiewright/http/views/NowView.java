package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.CourtStrip;
import tiewright.http.pieces.Notice;
import tiewright.http.pieces.TieLine;

/**
 * What is on now.
 *
 * @param latest the last notice, if there is one
 * @param arranged there are ties at all
 */
public record NowView(
        CourtStrip courts, List<TieLine> next, List<TieLine> ended, Optional<Notice> latest, boolean arranged) {}
