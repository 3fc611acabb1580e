package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Notice;

/**
 * Notices and rulings, the newest first.
 *
 * @param toTell for officials: the notices of which somebody is still to be told
 */
public record NoticesView(List<Notice> notices, List<Ruling> rulings, List<NavLink> toTell) {
    /** A ruling as everybody reads it. */
    public record Ruling(String number, String about, String ruling, String reason, String by) {}
}
