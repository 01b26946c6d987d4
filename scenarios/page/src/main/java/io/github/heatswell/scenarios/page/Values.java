package io.github.heatswell.scenarios.page;

import java.util.List;
import java.util.function.Function;
import org.teavm.jso.JSBody;
import org.teavm.jso.JSByRef;
import org.teavm.jso.JSObject;

/** An object of the page's script under construction: names with numbers, texts, lists and further objects. */
final class Values {

    private final JSObject object = empty();

    Values with(String name, String text) {
        put(object, name, text);
        return this;
    }

    Values with(String name, double number) {
        put(object, name, number);
        return this;
    }

    Values with(String name, boolean flag) {
        put(object, name, flag);
        return this;
    }

    /** Numbers without a copy of them: the array must not be used again. */
    Values with(String name, double[] numbers) {
        put(object, name, numbers);
        return this;
    }

    Values with(String name, Values values) {
        put(object, name, values.object);
        return this;
    }

    Values with(String name, JSObject value) {
        put(object, name, value);
        return this;
    }

    <T> Values each(String name, List<T> things, Function<T, Values> one) {
        JSObject list = emptyList();
        things.forEach(thing -> push(list, one.apply(thing).object));
        put(object, name, list);
        return this;
    }

    Values texts(String name, List<String> texts) {
        JSObject list = emptyList();
        texts.forEach(text -> push(list, text));
        put(object, name, list);
        return this;
    }

    JSObject object() {
        return object;
    }

    @JSBody(script = "return {};")
    private static native JSObject empty();

    @JSBody(script = "return [];")
    private static native JSObject emptyList();

    @JSBody(
            params = {"object", "name", "value"},
            script = "object[name] = value;")
    private static native void put(JSObject object, String name, String value);

    @JSBody(
            params = {"object", "name", "value"},
            script = "object[name] = value;")
    private static native void put(JSObject object, String name, double value);

    @JSBody(
            params = {"object", "name", "value"},
            script = "object[name] = value;")
    private static native void put(JSObject object, String name, boolean value);

    @JSBody(
            params = {"object", "name", "value"},
            script = "object[name] = value;")
    private static native void put(JSObject object, String name, @JSByRef double[] value);

    @JSBody(
            params = {"object", "name", "value"},
            script = "object[name] = value;")
    private static native void put(JSObject object, String name, JSObject value);

    @JSBody(
            params = {"list", "value"},
            script = "list.push(value);")
    private static native void push(JSObject list, JSObject value);

    @JSBody(
            params = {"list", "value"},
            script = "list.push(value);")
    private static native void push(JSObject list, String value);
}
