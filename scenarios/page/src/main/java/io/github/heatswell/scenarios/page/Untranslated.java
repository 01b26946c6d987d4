package io.github.heatswell.scenarios.page;

import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.MethodDescriptor;
import org.teavm.model.ValueType;
import org.teavm.model.emit.ProgramEmitter;
import org.teavm.model.emit.ValueEmitter;

/**
 * Leaves the messages of Hipparchus as they stand in its source while it is compiled to script. It translates and fills them in
 * with {@code ResourceBundle.Control}, which does not exist there, and {@code MessageFormat}, which would bring along the
 * currencies and calendars of the world, a fifth of the page.
 */
public final class Untranslated implements ClassHolderTransformer {

    private static final String PACKAGE = "org.hipparchus.exception.";

    private static final ValueType TEXT = ValueType.object("java.lang.String");

    private static final ValueType LOCALE = ValueType.object("java.util.Locale");

    private static final ValueType PATTERN = ValueType.object(PACKAGE + "Localizable");

    /** Made by the compiler to script, by its name. */
    public Untranslated() {}

    @Override
    public void transformClass(ClassHolder type, ClassHolderTransformerContext context) {
        if (type.getName().equals(PACKAGE + "MathRuntimeException")) {
            ProgramEmitter body = body(type, context, new MethodDescriptor("buildMessage", LOCALE, TEXT));
            source(body.var(0, type).invokeVirtual("getSpecifier", PATTERN));
        } else if (type.getName().equals(PACKAGE + "NullArgumentException")) {
            ValueType parts = ValueType.arrayOf(ValueType.object("java.lang.Object"));
            source(body(type, context, new MethodDescriptor("buildMessage", LOCALE, PATTERN, parts, TEXT))
                    .var(2, PATTERN));
        }
    }

    private static ProgramEmitter body(
            ClassHolder type, ClassHolderTransformerContext context, MethodDescriptor method) {
        return ProgramEmitter.create(type.getMethod(method), context.getHierarchy());
    }

    private static void source(ValueEmitter pattern) {
        pattern.invokeVirtual("getSourceString", TEXT).returnValue();
    }
}
