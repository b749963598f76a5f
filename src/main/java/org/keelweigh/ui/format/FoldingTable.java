package org.keelweigh.ui.format;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.List;

/**
 * A table of words and figures. On a phone each row folds into a block under its name; the roles keep it a table to those who
 * hear it.
 */
public final class FoldingTable {

    private FoldingTable() {}

    /** Makes a table whose first column names the row; columns from {@code firstNumber} on stand to the right. */
    public static Div of(String caption, List<String> columns, List<List<String>> rows, int firstNumber) {
        NativeTable table = new NativeTable();
        table.addClassName("kw-folding");
        table.getElement().setAttribute("role", "table");
        table.setCaptionText(caption);
        NativeTableRow head = row();
        for (int i = 0; i < columns.size(); i++) {
            head.add(heading(columns.get(i), "col", "columnheader", i >= firstNumber));
        }
        table.getHead().add(head);
        rows.forEach(cells -> table.getBody().add(row(columns, cells, firstNumber)));
        Div frame = new Div(table);
        frame.addClassName("kw-table-scroll");
        frame.getElement()
                .setAttribute("tabindex", "0")
                .setAttribute("role", "region")
                .setAttribute("aria-label", caption);
        return frame;
    }

    private static NativeTableRow row() {
        NativeTableRow row = new NativeTableRow();
        row.getElement().setAttribute("role", "row");
        return row;
    }

    private static NativeTableRow row(List<String> columns, List<String> cells, int firstNumber) {
        NativeTableRow row = row();
        row.add(heading(cells.getFirst(), "row", "rowheader", false));
        for (int i = 1; i < cells.size(); i++) {
            NativeTableCell cell = new NativeTableCell(cells.get(i));
            cell.getElement().setAttribute("role", "cell").setAttribute("data-column", columns.get(i));
            cell.setClassName("kw-number", i >= firstNumber);
            row.add(cell);
        }
        return row;
    }

    private static NativeTableHeaderCell heading(String text, String scope, String role, boolean number) {
        NativeTableHeaderCell cell = new NativeTableHeaderCell(text);
        cell.getElement().setAttribute("scope", scope).setAttribute("role", role);
        cell.setClassName("kw-number", number);
        return cell;
    }
}
