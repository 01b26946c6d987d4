package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The scripts of the live page agree with the types that their comments state, and hold nothing unused or undefined: the compiler of
 * TypeScript, which is a script itself, checks them in a browser. Skipped where there is none, unless {@code browser.required} is true.
 */
@Order(2)
class ScriptTypesTest {

    private static final String COMPILER = "META-INF/resources/webjars/typescript/5.9.2/lib/";

    private static final Pattern REFERENCE = Pattern.compile("/// <reference lib=\"([\\w.]+)\" />");

    /** What must be found, or nothing is looked at. */
    private static final String WRONG = """
            import { scaleOf, label } from './shapes.js';
            const unused = label;
            /** @param {import('./house.js').Live} live */
            export const wrong = (live) => scaleOf(live.house, 'PRESURE').shown(live.text) + undefinedName + live.chnages;
            """;

    private static final String CHECK = """
            (async () => {
              const files = { ...libraries, ...modules };
              const parsed = {};
              const host = {
                getSourceFile: (name, target) => files[name] === undefined ? undefined : parsed[name] ??= ts.createSourceFile(name, files[name], target),
                getDefaultLibFileName: () => '/lib.es2022.d.ts', getCurrentDirectory: () => '/', getCanonicalFileName: name => name,
                useCaseSensitiveFileNames: () => true, getNewLine: () => '\\n', writeFile: () => {}, directoryExists: () => true,
                fileExists: name => files[name] !== undefined, readFile: name => files[name],
              };
              const program = ts.createProgram(Object.keys(modules), {
                allowJs: true, checkJs: true, noEmit: true, skipLibCheck: true, types: [], target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ES2022,
                lib: ['lib.es2022.d.ts', 'lib.dom.d.ts', 'lib.dom.iterable.d.ts'], noUnusedLocals: true, noUnusedParameters: true,
                noImplicitReturns: true, noFallthroughCasesInSwitch: true, allowUnreachableCode: false, allowUnusedLabels: false,
              }, host);
              return ts.getPreEmitDiagnostics(program).map(fault => (fault.file ? fault.file.fileName + ':' + (1 + fault.file.getLineAndCharacterOfPosition(fault.start).line) : '')
                  + ' ' + ts.flattenDiagnosticMessageText(fault.messageText, ' ')).join('\\n');
            })()
            """;

    @TempDir
    Path folder;

    @Test
    void theScriptsAgreeWithTheTypesTheyState() throws IOException {
        Map<String, String> modules = new TreeMap<>(Map.of("/wrong.js", WRONG));
        for (String name : LivePage.MODULES) {
            modules.put("/" + name + ".js", text(LivePage.class.getResourceAsStream("live/" + name + ".js")));
        }
        Map<String, String> libraries = new TreeMap<>();
        for (String name : new String[] {"es2022", "dom", "dom.iterable"}) {
            add(name, libraries);
        }
        Files.writeString(folder.resolve("typescript.js"), library("typescript.js"));
        Files.writeString(
                folder.resolve("files.js"),
                "const modules = " + object(modules) + ";\nconst libraries = " + object(libraries) + ";\n");
        Path page = folder.resolve("check.html");
        Files.writeString(
                page,
                "<!DOCTYPE html><meta charset=utf-8><script src=typescript.js></script><script src=files.js></script>");
        try (Browser browser = Browser.start(folder)) {
            assertEquals("""
                    /wrong.js:2 'unused' is declared but its value is never read.
                    /wrong.js:4 Argument of type '"PRESURE"' is not assignable to parameter of type 'Shown'.
                    /wrong.js:4 Cannot find name 'undefinedName'. Did you mean 'undefined'?
                    /wrong.js:4 Property 'chnages' does not exist on type 'Live'. Did you mean 'changes'?""", browser.ask(page, CHECK).page());
        }
    }

    private static void add(String name, Map<String, String> libraries) throws IOException {
        String file = "lib." + name + ".d.ts";
        if (!libraries.containsKey("/" + file)) {
            String text = library(file);
            libraries.put("/" + file, text);
            for (String other : REFERENCE
                    .matcher(text)
                    .results()
                    .map(found -> found.group(1))
                    .toList()) {
                add(other, libraries);
            }
        }
    }

    private static String object(Map<String, String> files) {
        return files.entrySet().stream()
                .map(file -> "\"" + file.getKey() + "\": \""
                        + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(file.getValue())) + "\"")
                .collect(Collectors.joining(",\n", "{", "}"));
    }

    private static String library(String name) throws IOException {
        return text(ScriptTypesTest.class.getClassLoader().getResourceAsStream(COMPILER + name));
    }

    private static String text(InputStream found) throws IOException {
        try (InputStream in = Objects.requireNonNull(found)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
