package tiewright.conditions;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import tiewright.scoring.Format;

/** Looks for settings that go badly together. */
final class ConditionsNotes {
    /** Players of a usual squad. */
    static final int SQUAD = 8;

    private final Conditions conditions;
    private final List<ConditionsNote> notes = new ArrayList<>();

    private ConditionsNotes(Conditions conditions) {
        this.conditions = conditions;
    }

    static List<ConditionsNote> of(Conditions conditions) {
        ConditionsNotes found = new ConditionsNotes(conditions);
        found.squad();
        found.drawnTies();
        found.deadline();
        found.levelTeams();
        found.ending(Setting.SCORING);
        found.ending(Setting.DECIDER_SCORING);
        if (!conditions.value(Setting.EXCHANGE).equals("sealed-together")) {
            found.note(ConditionsNote.Kind.NOT_BLIND, Map.of(), Setting.EXCHANGE);
        }
        found.idle();
        return List.copyOf(found.notes);
    }

    private void squad() {
        int most = conditions.maxRubbersPerPlayer();
        int needed = Math.max(2, (2 * conditions.rubbers() + most - 1) / most);
        if (needed > SQUAD) {
            Map<String, String> data = Map.of("needed", Integer.toString(needed), "squad", Integer.toString(SQUAD));
            note(ConditionsNote.Kind.SQUAD_TOO_SMALL, data, Setting.MAX_RUBBERS_PER_PLAYER, Setting.RUBBERS);
        }
    }

    private void drawnTies() {
        if (conditions.hasDecider() && !conditions.canEndLevel()) {
            note(ConditionsNote.Kind.DECIDER_AFTER_VOID, Map.of(), Setting.DECIDER, Setting.RUBBERS);
        }
        if (!conditions.leavesTiesDrawn()) {
            return;
        }
        note(ConditionsNote.Kind.LEVEL_KNOCKOUT, Map.of(), Setting.DECIDER, Setting.RUBBERS);
        TiePoints points = conditions.tiePoints();
        if (!points.isWithoutEnd() && points.draw() == points.loss()) {
            note(ConditionsNote.Kind.DRAW_LIKE_LOSS, Map.of(), Setting.TIE_POINTS, Setting.DECIDER);
        }
    }

    private void deadline() {
        if (conditions.lateSheet() == LateSheet.GRACE && conditions.graceMinutes() == 0) {
            note(ConditionsNote.Kind.NO_GRACE, Map.of(), Setting.GRACE_MINUTES, Setting.LATE_SHEET);
        }
        if (conditions.lateSheet() == LateSheet.GRACE
                && conditions.graceMinutes() > conditions.sheetDeadlineMinutes()) {
            note(ConditionsNote.Kind.GRACE_PAST_START, Map.of(), Setting.GRACE_MINUTES, Setting.SHEET_DEADLINE_MINUTES);
        }
        if (conditions.lateSheet() == LateSheet.STRENGTH_ORDER && noOrder()) {
            note(ConditionsNote.Kind.NO_ORDER_TO_FILL, Map.of(), Setting.LATE_SHEET, Setting.ORDER_OF_STRENGTH);
        }
    }

    private boolean noOrder() {
        return conditions.orderOfStrength() == OrderOfStrength.NONE;
    }

    private void levelTeams() {
        String steps = conditions.levelTeams();
        int lots = steps.indexOf("lots>");
        if (lots >= 0) {
            Map<String, String> data = Map.of("steps", steps.substring(lots + "lots>".length()));
            note(ConditionsNote.Kind.STEPS_AFTER_LOTS, data, Setting.LEVEL_TEAMS);
        }
    }

    private void ending(Setting setting) {
        Format format = Format.parse(conditions.value(setting)).orElseThrow();
        if (!format.idle().isEmpty()) {
            String endings = format.idle().stream()
                    .map(ending -> ending.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                    .collect(Collectors.joining(", "));
            note(ConditionsNote.Kind.IDLE_ENDING, Map.of("endings", endings), setting);
        }
    }

    private void idle() {
        idle(
                Setting.GRACE_MINUTES,
                Setting.LATE_SHEET,
                conditions.graceMinutes() > 0 && conditions.lateSheet() != LateSheet.GRACE);
        idle(
                Setting.CHALLENGE_TO_ORDER,
                Setting.ORDER_OF_STRENGTH,
                noOrder() && !conditions.value(Setting.CHALLENGE_TO_ORDER).equals("none"));
        idle(Setting.WRONG_ORDER_LATE, Setting.ORDER_OF_STRENGTH, noOrder());
        idle(Setting.DECIDER_SCORING, Setting.DECIDER, !conditions.hasDecider());
        idle(Setting.DECIDER_MINUTES, Setting.DECIDER, !conditions.hasDecider());
        idle(
                Setting.OVERTIME_POINTS,
                Setting.SCORING,
                conditions.scoring().byOne() && conditions.overtimePoints() == OvertimePoints.CAPPED);
    }

    private void idle(Setting setting, Setting because, boolean isIdle) {
        if (isIdle && !(isOfPreset(setting) && isOfPreset(because))) {
            note(ConditionsNote.Kind.IDLE, Map.of(), setting, because);
        }
    }

    /** What a preset itself leaves without effect is nothing that anybody chose. */
    private boolean isOfPreset(Setting setting) {
        return conditions.value(setting).equals(setting.of(conditions.base()));
    }

    private void note(ConditionsNote.Kind kind, Map<String, String> data, Setting... settings) {
        notes.add(new ConditionsNote(kind, List.of(settings), data));
    }
}
