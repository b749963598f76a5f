package org.keelweigh.condition;

import java.util.Comparator;
import org.keelweigh.quantity.Estimate;

/**
 * A fault that was found.
 *
 * @param check the check that found it
 * @param grade how bad it is; where the catalogue has no grade for the outcome, the next lesser one
 * @param finding what was entered
 */
public record FoundFault(Check check, Grade grade, Finding finding) {

    /**
     * Tells the grade whose cost counts. Some worse faults cannot be put right at all and cost nothing to mend; what the
     * lesser one costs is spent on them at least, so that a worse outcome never looks cheaper.
     */
    Grade pricingGrade() {
        return check.grades().stream()
                .filter(each -> each.outcome().compareTo(grade.outcome()) <= 0)
                .max(Comparator.comparingDouble(Grade::expectedSpend).thenComparing(Grade::outcome))
                .orElse(grade);
    }

    /** Tells the cost that counts: the repairer's quote where there is one, the catalogue's otherwise. */
    Estimate cost() {
        return finding.quote() == null ? pricingGrade().repairCost() : finding.quote();
    }

    /** Tells the share of that cost expected to be spent. Whoever asked for a written quote means to have it done. */
    double spendShare() {
        return finding.quote() == null ? pricingGrade().spendShare() : 1;
    }

    /** Tells how likely it is still there when the boat is sold again: 0 with a quote, 1 where nothing can mend it. */
    double leftShare() {
        if (finding.quote() != null) {
            return 0;
        }
        return grade.repairCost().high() > 0 ? 1 - grade.spendShare() : 1;
    }

    double expectedSpend() {
        return spendShare() * cost().likely();
    }

    /** Tells in words what was found. */
    String words() {
        return check.title() + ": " + grade.looksLike();
    }
}
