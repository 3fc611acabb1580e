package tiewright.timetable;

/** Makes the order of play. */
public final class Planner {
  private Planner() {}

  /**
   * The best plan found within the budget. What cannot be planned at all is said before any search, with the smallest set
   * that cannot hold together; a day that is too short is planned all the same, so that one sees by how much.
   */
  public static Planned plan(PlanProblem problem, Budget budget) {
    throw new UnsupportedOperationException("not built yet");
  }
}
