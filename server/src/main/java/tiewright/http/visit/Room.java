package tiewright.http.visit;

import java.util.List;

/** The pages that serve one kind of people, and what goes on for them in the background. */
public interface Room extends AutoCloseable {
    List<Page> pages();

    /** The service ends: nobody waits any more for what goes on. */
    @Override
    default void close() {}
}
