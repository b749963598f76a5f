package org.keelweigh.ui.chart;

/** Why one boat is ahead of another, criterion by criterion. */
public class DifferenceBar extends Chart<DifferenceBarData> {

    public DifferenceBar(String title) {
        super("kw-difference-bar", title);
    }
}
