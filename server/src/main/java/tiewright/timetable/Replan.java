package tiewright.timetable;

import java.util.List;
import tiewright.event.Event;

/** The day no longer fits: what could be done, each with its end, its price and who must be told. Nobody decides but the organiser. */
public final class Replan {
  private Replan() {}

  /**
   * First the plan as it is, then every way to shorten it that changes something here, those that end in time first.
   *
   * @param asked with the moment from which on is planned, the courts that are lost, the freeze window
   * @param budget for each option
   */
  public static List<ReplanOption> options(Event event, PlanProblem.Asked asked, Budget budget) {
    throw new UnsupportedOperationException("not built yet");
  }
}
