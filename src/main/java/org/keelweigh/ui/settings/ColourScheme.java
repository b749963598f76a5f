package org.keelweigh.ui.settings;

import com.vaadin.flow.component.page.ColorScheme;
import org.keelweigh.boat.Coded;

/** Light, dark, or as the visitor's system has it. */
enum ColourScheme implements Coded {
    SYSTEM("system", "as my system has it", ColorScheme.Value.LIGHT_DARK),
    LIGHT("light", "light", ColorScheme.Value.LIGHT),
    DARK("dark", "dark", ColorScheme.Value.DARK);

    private final String code;
    private final String label;
    private final ColorScheme.Value value;

    ColourScheme(String code, String label, ColorScheme.Value value) {
        this.code = code;
        this.label = label;
        this.value = value;
    }

    @Override
    public String code() {
        return code;
    }

    String label() {
        return label;
    }

    ColorScheme.Value value() {
        return value;
    }
}
