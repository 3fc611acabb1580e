package tiewright.conditions;
public record Conditions(Preset preset) {
  public static Conditions of(Preset p) { return new Conditions(p); }
  public int rubbers() { return 4; }
  public DeciderKind decider() { return DeciderKind.ANY_TWO; }
  public StopWhenDecided stopWhenDecided() { return StopWhenDecided.KNOCKOUT; }
  public int sheetDeadlineMinutes() { return 15; }
  public int deciderMinutes() { return 5; }
}
