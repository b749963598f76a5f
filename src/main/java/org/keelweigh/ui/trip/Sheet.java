package org.keelweigh.ui.trip;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;

/** One section of the page: a heading, a sentence, and fields in rows that wrap. */
class Sheet extends Section {

    Sheet(String heading, String sentence) {
        addClassName("kw-sheet");
        H2 title = new H2(heading);
        add(title);
        if (!sentence.isEmpty()) {
            add(soft(sentence));
        }
    }

    static Paragraph soft(String sentence) {
        Paragraph paragraph = new Paragraph(sentence);
        paragraph.addClassName("kw-soft");
        return paragraph;
    }

    static Paragraph caution(String sentence) {
        Paragraph paragraph = new Paragraph(sentence);
        paragraph.addClassName("kw-caution");
        return paragraph;
    }

    static Div row(Component... fields) {
        Div row = new Div(fields);
        row.addClassName("kw-trip-fields");
        return row;
    }
}
