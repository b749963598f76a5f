package org.keelweigh.ui.boat;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.Locale;

/** The plain pieces that every section is put together from. */
final class Plain {

    /** How a tag is to be read; the words carry it, the colour only helps. */
    enum Tone {
        QUIET,
        GOOD,
        WARN,
        BAD
    }

    private Plain() {}

    static Section sheet(String heading, Component... content) {
        Section sheet = new Section();
        sheet.addClassName("kw-sheet");
        sheet.add(new H3(heading));
        sheet.add(content);
        return sheet;
    }

    static UnorderedList list(List<String> sentences) {
        UnorderedList list = new UnorderedList();
        sentences.forEach(each -> list.add(new ListItem(each)));
        return list;
    }

    static Paragraph soft(String text) {
        Paragraph paragraph = new Paragraph(text);
        paragraph.addClassName("kw-soft");
        return paragraph;
    }

    static Div caution(List<String> sentences) {
        Div caution = new Div();
        caution.addClassName("kw-caution");
        sentences.forEach(each -> caution.add(new Div(each)));
        return caution;
    }

    static NativeDetails details(String summary, Component... content) {
        return new NativeDetails(summary, row("kw-stack", content));
    }

    static Span tag(String text, Tone tone) {
        Span tag = new Span(text);
        tag.addClassName("kw-tag");
        if (tone != Tone.QUIET) {
            tag.getElement().setAttribute("data-tone", tone.name().toLowerCase(Locale.ROOT));
        }
        return tag;
    }

    static Div row(String className, Component... content) {
        Div row = new Div(content);
        row.addClassName(className);
        return row;
    }

    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
