package org.keelweigh;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.component.page.Push;
import com.vaadin.flow.server.AppShellSettings;
import com.vaadin.flow.theme.aura.Aura;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.core.env.ConfigurableEnvironment;

/** Starts Keelweigh and names the stylesheets every page shares. */
@SpringBootApplication
@Push
@StyleSheet(Aura.STYLESHEET)
@StyleSheet("styles.css")
public class KeelweighApplication implements AppShellConfigurator {

    private static final Logger LOG = LoggerFactory.getLogger(KeelweighApplication.class);

    public static void main(String[] args) {
        ConfigurableEnvironment environment =
                SpringApplication.run(KeelweighApplication.class, args).getEnvironment();
        LOG.info(
                "Keelweigh is ready on http://localhost:{}; shortlists are kept in {}",
                environment.getProperty("local.server.port"),
                environment.getProperty("spring.datasource.url"));
    }

    @Override
    public void configurePage(AppShellSettings settings) {
        settings.addFavIcon("icon", "icons/keel.svg", "any");
    }
}
