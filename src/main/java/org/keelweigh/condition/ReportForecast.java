package org.keelweigh.condition;

import java.util.List;

/**
 * One report that a look at a check could bring, and what would then be believed.
 *
 * @param report what would be reported
 * @param chance how likely that report is, in (0, 1]
 * @param checks the chances of every check's true outcomes after that report, in the network's order of checks; the asked
 *     check is among them, and stays uncertain unless the look is certain
 */
public record ReportForecast(Outcome report, double chance, List<OutcomeChances> checks) {

    public ReportForecast {
        checks = List.copyOf(checks);
    }
}
