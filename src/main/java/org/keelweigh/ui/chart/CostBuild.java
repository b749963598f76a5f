package org.keelweigh.ui.chart;

/** What each boat takes out of the purse, group by group, and what it gives back when sold. */
public class CostBuild extends BoatChart<CostBuildData> {

    public CostBuild(String title) {
        super("kw-cost-build", title);
    }
}
