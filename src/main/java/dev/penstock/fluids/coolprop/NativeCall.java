package dev.penstock.fluids.coolprop;

import com.sun.jna.Memory;
import com.sun.jna.Native;
import com.sun.jna.NativeLong;
import com.sun.jna.Pointer;
import java.lang.ref.Reference;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;

/**
 * A C function with its own argument block. Arguments are written in place and stay until overwritten, so that a call
 * allocates nothing: about a quarter of the time of JNA's ordinary invocation. Not thread-safe.
 */
final class NativeCall {

    /** C types that CoolProp's interfaces use, with libffi's type code. */
    enum Type {
        VOID(1, 0),
        LONG(NativeLong.SIZE, NativeLong.SIZE == 8 ? 12 : 10),
        DOUBLE(8, 3),
        POINTER(8, 14);

        private final Memory description = new Memory(24);

        /** Lays out libffi's {@code struct ffi_type {size_t size; unsigned short alignment, type; elements}}. */
        Type(int size, int code) {
            description.clear();
            description.setLong(0, size);
            description.setShort(8, (short) size);
            description.setShort(10, (short) code);
        }
    }

    private static final int SLOT = 8;
    private static final LongAdder MADE = new LongAdder();
    private static final List<Memory> KEPT = Collections.synchronizedList(new ArrayList<>());
    private static final Map<List<Type>, Long> INTERFACES = new ConcurrentHashMap<>();

    private final long function;
    private final long callInterface;
    private final Memory block;
    private final ByteBuffer values;
    private final long result;
    private final long arguments;

    /** Memory that arguments point to: an address alone would not keep it. */
    private final Pointer[] held;

    /**
     * @param function address of the function
     * @param result type of its result
     * @param types types of its arguments
     */
    NativeCall(Pointer function, Type result, Type... types) {
        int count = types.length;
        this.function = Pointer.nativeValue(function);
        this.callInterface = INTERFACES.computeIfAbsent(signature(result, types), NativeCall::prepare);
        this.block = new Memory((2L * count + 1) * SLOT);
        block.clear();
        this.values = block.getByteBuffer(0, block.size()).order(ByteOrder.nativeOrder());
        long base = Pointer.nativeValue(block);
        for (int i = 0; i < count; i++) {
            values.putLong((count + 1 + i) * SLOT, base + (long) (1 + i) * SLOT);
        }
        this.result = base;
        this.arguments = base + (long) (count + 1) * SLOT;
        this.held = new Pointer[count];
    }

    private static List<Type> signature(Type result, Type... types) {
        List<Type> list = new ArrayList<>(List.of(types));
        list.add(0, result);
        return List.copyOf(list);
    }

    /** The prepared interface lives as long as the process; there are only as many as signatures. */
    private static long prepare(List<Type> signature) {
        int count = signature.size() - 1;
        Memory types = new Memory((count + 1L) * SLOT);
        for (int i = 0; i < count; i++) {
            types.setPointer((long) i * SLOT, signature.get(i + 1).description);
        }
        KEPT.add(types);
        return Native.ffi_prep_cif(
                0, count, Pointer.nativeValue(signature.get(0).description), Pointer.nativeValue(types));
    }

    /** Writes a whole number or an address; on a little-endian machine this serves a 32-bit {@code long} too. */
    NativeCall with(int index, long value) {
        values.putLong((1 + index) * SLOT, value);
        return this;
    }

    NativeCall with(int index, double value) {
        values.putDouble((1 + index) * SLOT, value);
        return this;
    }

    NativeCall with(int index, Pointer value) {
        held[index] = value;
        return with(index, Pointer.nativeValue(value));
    }

    /** @return calls of C functions in this process so far */
    static long made() {
        return MADE.sum();
    }

    NativeCall call() {
        MADE.increment();
        try {
            Native.ffi_call(callInterface, function, result, arguments);
        } finally {
            Reference.reachabilityFence(this);
        }
        return this;
    }

    double doubleResult() {
        return values.getDouble(0);
    }

    long longResult() {
        return NativeLong.SIZE == 8 ? values.getLong(0) : values.getInt(0);
    }

    Pointer pointerResult() {
        long address = values.getLong(0);
        return address == 0 ? Pointer.NULL : new Pointer(address);
    }
}
