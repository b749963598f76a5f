package org.keelweigh.condition;

/**
 * A finding that needs a decision before the boat is bought or launched.
 *
 * @param check the check's id
 * @param group what its repair is counted with
 * @param outcome what came out
 * @param rule what it does to the purchase
 * @param reason a sentence for people
 * @param safety 0 none, 1 nuisance, 2 can end a trip, 3 can flood or strand you, 4 can kill
 */
public record SeriousFinding(
        String check, RepairGroup group, Outcome outcome, StopRule rule, String reason, int safety) {

    static SeriousFinding of(FoundFault fault) {
        Grade grade = fault.grade();
        String why = grade.why().map(note -> " (" + note + ")").orElse("");
        return new SeriousFinding(
                fault.check().id(),
                fault.check().group(),
                grade.outcome(),
                grade.stop(),
                fault.words() + why + ".",
                grade.safety());
    }
}
