package tiewright.http.pieces;

import java.util.List;

/** What a person at the desk should do next, the most pressing first. */
public record DoNext(String title, List<Item> items, String nothing) {

    public DoNext {
        items = List.copyOf(items);
    }

    /**
     * @param what what to do, in a sentence
     * @param detail facts that help to do it
     * @param when the moment it is about, worded shortly; empty where the state says enough
     * @param href where it is done
     * @param action words of the link there
     */
    public record Item(String what, String detail, String when, State state, String href, String action) {}
}
