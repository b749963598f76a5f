package org.keelweigh;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.component.page.Push;
import com.vaadin.flow.theme.aura.Aura;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts Keelweigh and names the stylesheets every page shares. */
@SpringBootApplication
@Push
@StyleSheet(Aura.STYLESHEET)
@StyleSheet("styles.css")
public class KeelweighApplication implements AppShellConfigurator {

    public static void main(String[] args) {
        SpringApplication.run(KeelweighApplication.class, args);
    }
}
