package io.github.heatswell.scenarios.architecture;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTreeScanner;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;

/**
 * Looks through Java sources for numbers that others can see and whose Javadoc names no unit: parameters, results, record
 * components and constants of public types. The JDK's own compiler reads the sources; what is written is judged here.
 */
final class StatedUnits {

    private static final Pattern NUMBER =
            Pattern.compile("\\b(float|double|(To|Obj|Optional)?Double(?!Stream)\\w*)\\b");

    /** A unit in round brackets, alone or before more words: {@code (Pa, absolute)}, {@code (s since midnight)}. */
    private static final Pattern UNIT =
            Pattern.compile("\\((-|no unit|fraction|%|pixels?|points?|years?|1/year|days?|h|s|1/s"
                    + "|Pa|bar|1/Pa|K|degC|1/K|mm|m|m/s2|m2|m3|m3/s|m3/a|m3/kg|m3/Pa|L|m&sup3;|Pa/K|kg|kg/s|kg/m3|kg/m&sup3;|kg/mol"
                    + "|W|W/K|J|J/kg|J/K|J/\\(kg K\\)|N|N m)(?=[ ,;:)])");

    /** Words that leave the unit to another place that names it. */
    private static final Pattern ELSEWHERE =
            Pattern.compile("in (its|the|this|their|whatever|each in the) ?(same |SI |\\{@link #unit\\(\\) )?units?\\b"
                    + "|in \\{@code \\w*[uU]nit}");

    private static final Pattern PASCAL = Pattern.compile("\\((Pa|bar)(?=[ ,;:)])");
    private static final Pattern REFERENCE = Pattern.compile("(?i)absolute|gauge|difference|modulus");

    private final List<String> complaints = new ArrayList<>();

    private StatedUnits() {}

    /**
     * Finds what has no unit.
     *
     * @param sources the sources to look through
     * @return a line for each number without a unit and each pressure without a reference
     */
    static List<String> missingIn(Iterable<? extends JavaFileObject> sources) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        JavacTask task = (JavacTask) compiler.getTask(null, null, null, List.of("-proc:none"), null, sources);
        StatedUnits found = new StatedUnits();
        try {
            DocTrees docs = DocTrees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                found.new PublicNumbers(docs).scan(unit, null);
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return found.complaints;
    }

    /** Visits what is public, and asks for the unit of each number there. */
    private final class PublicNumbers extends TreePathScanner<Void, Void> {
        private final DocTrees docs;

        PublicNumbers(DocTrees docs) {
            this.docs = docs;
        }

        @Override
        public Void visitClass(ClassTree type, Void nothing) {
            if (!isOpen(type.getModifiers())) {
                return null;
            }
            Comment comment = new Comment(docs.getDocCommentTree(getCurrentPath()));
            String where = name();
            for (Tree member : type.getMembers()) {
                if (member instanceof VariableTree component && isComponent(type, component)) {
                    ask(where, component, comment.of(component.getName().toString()));
                }
            }
            return super.visitClass(type, null);
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            DocCommentTree written = docs.getDocCommentTree(getCurrentPath());
            boolean inherited =
                    written == null && method.getModifiers().toString().contains("@Override");
            if (!isOpen(method.getModifiers()) || inherited) {
                return null;
            }
            Comment comment = new Comment(written);
            boolean unitFollows = false;
            for (int i = method.getParameters().size() - 1; i >= 0; i--) {
                VariableTree parameter = method.getParameters().get(i);
                unitFollows |= parameter.getType().toString().endsWith("Unit");
                if (!unitFollows) {
                    ask(name(), parameter, comment.of(parameter.getName().toString()));
                }
            }
            if (isNumber(method.getReturnType())) {
                judge(name() + " returns", method.getName().toString(), comment.returned());
            }
            return null;
        }

        @Override
        public Void visitVariable(VariableTree field, Void nothing) {
            if (isOpen(field.getModifiers()) && field.getModifiers().getFlags().contains(Modifier.STATIC)) {
                ask(name(), field, new Comment(docs.getDocCommentTree(getCurrentPath())).whole());
            }
            return null;
        }

        private void ask(String where, VariableTree variable, String text) {
            if (isNumber(variable.getType())) {
                judge(where + " " + variable.getName(), variable.getName().toString(), text);
            }
        }

        private boolean isComponent(ClassTree type, VariableTree field) {
            return type.getKind() == Tree.Kind.RECORD
                    && !field.getModifiers().getFlags().contains(Modifier.STATIC);
        }

        private boolean isOpen(ModifiersTree modifiers) {
            Tree owner = getCurrentPath().getParentPath().getLeaf();
            boolean inInterface = owner.getKind() == Tree.Kind.INTERFACE
                    && !modifiers.getFlags().contains(Modifier.PRIVATE);
            return inInterface
                    || modifiers.getFlags().contains(Modifier.PUBLIC)
                    || modifiers.getFlags().contains(Modifier.PROTECTED);
        }

        private String name() {
            StringBuilder name = new StringBuilder();
            for (TreePath path = getCurrentPath(); path != null; path = path.getParentPath()) {
                Tree leaf = path.getLeaf();
                String part = leaf instanceof ClassTree type
                        ? type.getSimpleName().toString()
                        : leaf instanceof MethodTree method ? method.getName().toString() : "";
                name.insert(0, part.isEmpty() || name.isEmpty() ? part : part + ".");
            }
            return name.toString();
        }
    }

    private static boolean isNumber(Tree type) {
        return type != null && NUMBER.matcher(type.toString()).find();
    }

    private void judge(String where, String name, String text) {
        if (!UNIT.matcher(text).find() && !ELSEWHERE.matcher(text).find()) {
            complaints.add(where + ": no unit in '" + text + "'");
        } else if (PASCAL.matcher(text).find()
                && !REFERENCE.matcher(name + " " + text).find()) {
            complaints.add(where + ": neither absolute, gauge nor difference in '" + text + "'");
        }
    }

    /** What a comment says of each thing; nothing where there is no comment. */
    private record Comment(Optional<DocCommentTree> tree) {
        Comment(DocCommentTree tree) {
            this(Optional.ofNullable(tree));
        }

        String of(String parameter) {
            return said(tag ->
                    tag instanceof ParamTree param && param.getName().getName().contentEquals(parameter)
                            ? param.getDescription()
                            : List.of());
        }

        String returned() {
            return said(tag -> tag instanceof ReturnTree result ? result.getDescription() : List.of());
        }

        String whole() {
            return tree.map(comment -> plain(comment.getFullBody())).orElse("");
        }

        private String said(Function<DocTree, List<? extends DocTree>> part) {
            StringBuilder said = new StringBuilder();
            tree.ifPresent(comment -> new DocTreeScanner<Void, Void>() {
                @Override
                public Void scan(DocTree tag, Void nothing) {
                    if (tag != null) {
                        said.append(plain(part.apply(tag)));
                    }
                    return super.scan(tag, null);
                }
            }.scan(comment, null));
            return said.toString();
        }

        private static String plain(List<? extends DocTree> parts) {
            StringBuilder text = new StringBuilder();
            parts.forEach(text::append);
            return text.toString().replaceAll("\\s+", " ");
        }
    }
}
