package org.keelweigh.ui.chart;

/** How often each boat comes first, second and so on. */
public class RankShares extends BoatChart<RankSharesData> {

    public RankShares(String title) {
        super("kw-rank-shares", title);
    }
}
