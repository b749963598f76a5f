package org.keelweigh.ui.settings;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.page.ColorScheme;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextField;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.keelweigh.ui.shell.Visitor;
import org.keelweigh.ui.shortlists.ShortlistsView;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

@SpringBootTest
class SettingsViewTests extends SpringBrowserlessTest {

    @TempDir
    static Path folder;

    @DynamicPropertySource
    static void keepsItsDataApart(DynamicPropertyRegistry registry) {
        registry.add("keelweigh.data-folder", folder::toString);
    }

    @Test
    void tellsWhereTheDataAreAndOffersABackup() {
        navigate("settings", SettingsView.class);

        assertThat(find(Paragraph.class)
                        .withTestId("data-folder")
                        .single()
                        .getElement()
                        .getTextRecursively())
                .contains(folder.toAbsolutePath().normalize().toString());
        assertThat(find(Anchor.class).withTestId("backup").single().getHref()).contains("VAADIN/dynamic");
    }

    @Test
    void changesTheColours() {
        navigate("settings", SettingsView.class);
        RadioButtonGroup<ColourScheme> colours = colours();
        assertThat(colours.getValue()).isEqualTo(ColourScheme.SYSTEM);

        test(colours).selectItem("dark");
        assertThat(UI.getCurrent().getPage().getColorScheme()).isEqualTo(ColorScheme.Value.DARK);

        navigate("", ShortlistsView.class);
        navigate("settings", SettingsView.class);
        assertThat(colours().getValue()).isEqualTo(ColourScheme.DARK);
    }

    @SuppressWarnings("unchecked")
    private RadioButtonGroup<ColourScheme> colours() {
        return find(RadioButtonGroup.class).withTestId("colours").single();
    }

    @Test
    void tellsVersionAndCatalogues() {
        navigate("settings", SettingsView.class);

        assertThat(find(Paragraph.class).withTestId("version").single().getText())
                .contains("version");
        assertThat(find(Paragraph.class).withTestId("catalogue-folder").single().getText())
                .contains("come with the program");
        assertThat(find(NativeTable.class).single().getElement().getTextRecursively())
                .contains("checks.csv", "33 CFR 181.25");
    }

    @Test
    void remembersTheVisitorsName() {
        navigate("settings", SettingsView.class);

        test(find(TextField.class).withTestId("visitor").single()).setValue("Wren");

        assertThat(Visitor.name()).isEqualTo("Wren");
    }
}
