package io.github.heatswell.scenarios.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.DirectiveTree;
import com.sun.source.tree.ExportsTree;
import com.sun.source.tree.ModuleTree;
import com.sun.source.tree.RequiresTree;
import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * What a {@code module-info.java} lets other modules use. The JDK's own compiler reads it.
 *
 * @param exported the packages that every module may use
 * @param implied the modules that come along with this one
 */
record ModuleDeclaration(Set<String> exported, Set<String> implied) {

    static ModuleDeclaration read(Path source) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        Set<String> exported = new TreeSet<>();
        Set<String> implied = new TreeSet<>();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task =
                    (JavacTask) compiler.getTask(null, files, null, List.of(), null, files.getJavaFileObjects(source));
            for (CompilationUnitTree unit : task.parse()) {
                ModuleTree module = unit.getModule();
                for (DirectiveTree directive : module.getDirectives()) {
                    if (directive instanceof ExportsTree exports && exports.getModuleNames() == null) {
                        exported.add(exports.getPackageName().toString());
                    } else if (directive instanceof RequiresTree requires && requires.isTransitive()) {
                        implied.add(requires.getModuleName().toString());
                    }
                }
            }
        }
        return new ModuleDeclaration(exported, implied);
    }
}
