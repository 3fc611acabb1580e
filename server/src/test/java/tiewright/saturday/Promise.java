package tiewright.saturday;

import java.util.List;

/** Something that holds at any moment of any day; one object for a whole day, so that it may remember. */
interface Promise {
    List<Broken> broken(Moment moment);
}
