package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.NavLink;

/**
 * New personal links, shown once, as slips to cut out.
 *
 * @param onwards to the list of links, or in by the new link where the own one ended
 * @param replacesOwn the link by which the reader came has ended
 */
public record LinksMadeView(List<Slip> slips, NavLink onwards, boolean replacesOwn) {
    public LinksMadeView {
        slips = List.copyOf(slips);
    }

    /**
     * @param whom for whom it is
     * @param may what it opens
     * @param address the whole address with the secret
     * @param mail begins a mail with the address in it
     * @param size modules along a side of the QR code
     * @param path its black modules as an SVG path
     * @param key what to compare of the key to which this person's phone closes sheets; empty for who seals none
     */
    public record Slip(String whom, String may, String address, String mail, int size, String path, String key) {}
}
