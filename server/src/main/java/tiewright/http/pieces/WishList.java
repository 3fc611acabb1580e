package tiewright.http.pieces;

import java.util.List;

/** A captain's wishes and what became of each. */
public record WishList(String title, List<Wish> wishes, String nothing) {

    public WishList {
        wishes = List.copyOf(wishes);
    }

    /**
     * @param cost what keeping or breaking it costs, worded
     * @param removeAction where taking it back is posted to, empty if it cannot be
     */
    public record Wish(String words, State state, String cost, String removeAction, Button remove) {}
}
