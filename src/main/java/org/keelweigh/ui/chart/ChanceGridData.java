package org.keelweigh.ui.chart;

import java.util.List;

/**
 * Chances as cells out of one hundred.
 *
 * @param summary one sentence on what the cells show
 * @param panels side by side, such as before and after a check
 */
public record ChanceGridData(String summary, List<Panel> panels) implements ChartData {

    private static final int CELLS = 100;

    public ChanceGridData {
        Require.text(summary, "summary");
        panels = List.copyOf(Require.notEmpty(panels, "panels"));
    }

    /** How serious an outcome is. */
    public enum Tone {
        FINE,
        MINOR,
        MAJOR,
        STOP
    }

    /** One hundred cells, in groups. */
    public record Panel(String title, List<Group> groups) {
        public Panel {
            Require.text(title, "title");
            groups = List.copyOf(groups);
            int cells = groups.stream().mapToInt(Group::cells).sum();
            Require.check(cells, cells == CELLS, "the cells of \"" + title + "\" must be 100, were " + cells);
        }
    }

    /** Cells that share an outcome. */
    public record Group(String words, int cells, Tone tone) {
        public Group {
            Require.text(words, "the words of a group");
            Require.within(cells, 0, CELLS, "the cells of \"" + words + "\"");
        }
    }

    @Override
    public NumbersTable table() {
        return new NumbersTable(
                "Chances out of 100",
                List.of("when", "outcome", "of 100"),
                panels.stream()
                        .flatMap(panel -> panel.groups().stream().map(group -> row(panel, group)))
                        .toList());
    }

    private static List<String> row(Panel panel, Group group) {
        return List.of(panel.title(), group.words(), String.valueOf(group.cells()));
    }
}
