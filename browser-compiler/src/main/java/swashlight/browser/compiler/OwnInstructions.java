package swashlight.browser.compiler;

import org.teavm.backend.wasm.TeaVMWasmGCHost;
import org.teavm.backend.wasm.intrinsics.WasmGCInlineIntrinsic;
import org.teavm.backend.wasm.model.instruction.WasmFloatType;
import org.teavm.backend.wasm.model.instruction.WasmFloatUnaryOperation;
import org.teavm.model.MethodReference;
import org.teavm.vm.spi.TeaVMHost;
import org.teavm.vm.spi.TeaVMPlugin;

/**
 * Root, floor, ceiling and magnitude as WebAssembly's own instructions. TeaVM 0.16 calls out to JavaScript for the first three, some of them
 * several times a chamber and step. The instructions are IEEE 754's, as Java's methods are: same bits.
 */
public final class OwnInstructions implements TeaVMPlugin {
    @Override
    public void install(TeaVMHost host) {
        TeaVMWasmGCHost webAssembly = host.getExtension(TeaVMWasmGCHost.class);
        if (webAssembly == null) {
            return; // compiling to JavaScript
        }
        webAssembly.contributeToCodeGen((context, registry) -> {
            registry.inlineIntrinsics().registerIntrinsic(method("sqrt"), unary(WasmFloatUnaryOperation.SQRT));
            registry.inlineIntrinsics().registerIntrinsic(method("floor"), unary(WasmFloatUnaryOperation.FLOOR));
            registry.inlineIntrinsics().registerIntrinsic(method("ceil"), unary(WasmFloatUnaryOperation.CEIL));
            registry.inlineIntrinsics().registerIntrinsic(method("abs"), unary(WasmFloatUnaryOperation.ABS));
        });
    }

    private static MethodReference method(String name) {
        return new MethodReference(Math.class, name, double.class, double.class);
    }

    private static WasmGCInlineIntrinsic unary(WasmFloatUnaryOperation operation) {
        return (call, context, code) -> {
            context.generate(code, call.getArguments().get(0));
            code.floatUnary(WasmFloatType.FLOAT64, operation);
        };
    }
}
