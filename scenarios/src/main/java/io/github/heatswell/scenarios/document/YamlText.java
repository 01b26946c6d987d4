package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.document.Node.Entry;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.Node.Scalar;
import java.util.LinkedHashMap;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.common.FlowStyle;

/**
 * Writes a tree as a text in YAML.
 */
public final class YamlText {

    private static final int WIDTH = 120;

    private YamlText() {}

    /**
     * A text that reads back as the tree.
     *
     * @param tree keys and values
     * @return the text, one key in a line
     */
    public static String of(Mapping tree) {
        DumpSettings settings = DumpSettings.builder()
                .setDefaultFlowStyle(FlowStyle.BLOCK)
                .setWidth(WIDTH)
                .setSplitLines(false)
                .build();
        return new Dump(settings).dumpToString(plain(tree));
    }

    private static Object plain(Node node) {
        if (node instanceof Scalar scalar) {
            return scalar.text();
        }
        if (node instanceof Items items) {
            return items.items().stream().map(YamlText::plain).toList();
        }
        Map<String, Object> entries = new LinkedHashMap<>();
        for (Entry entry : ((Mapping) node).entries()) {
            entries.put(entry.key().text(), plain(entry.value()));
        }
        return entries;
    }
}
