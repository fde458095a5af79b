package swashlight.architecture;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.lang.model.element.Modifier;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;

/** Reads Java sources with the compiler's own parser and lists every public number in them. */
final class PublicDoubles extends TreePathScanner<Void, String> {
    private final CompilationUnitTree unit;
    private final DocTrees docs;
    private final List<PublicDouble> found = new ArrayList<>();

    private PublicDoubles(CompilationUnitTree unit, DocTrees docs) {
        this.unit = unit;
        this.docs = docs;
    }

    static List<PublicDouble> of(Iterable<? extends JavaFileObject> sources) throws IOException {
        JavacTask task = (JavacTask)
                ToolProvider.getSystemJavaCompiler().getTask(null, null, null, List.of("-proc:none"), null, sources);
        DocTrees docs = DocTrees.instance(task);
        List<PublicDouble> all = new ArrayList<>();
        for (CompilationUnitTree unit : task.parse()) {
            PublicDoubles reader = new PublicDoubles(unit, docs);
            reader.scan(unit, "");
            all.addAll(reader.found);
        }
        return all;
    }

    @Override
    public Void visitClass(ClassTree type, String enclosingDoc) {
        if (!isPublic(type.getModifiers(), getCurrentPath().getParentPath())) return null;
        return super.visitClass(type, doc(getCurrentPath()));
    }

    @Override
    public Void visitMethod(MethodTree method, String typeDoc) {
        boolean inherits = method.getModifiers().getAnnotations().stream()
                .anyMatch(mark -> mark.getAnnotationType().toString().equals("Override"));
        if (!inherits && isPublic(method.getModifiers(), getCurrentPath().getParentPath())) {
            note(method, "method", method.getName().toString(), method.getReturnType(), typeDoc);
        }
        return null;
    }

    @Override
    public Void visitVariable(VariableTree field, String typeDoc) {
        ClassTree owner = (ClassTree) getCurrentPath().getParentPath().getLeaf();
        boolean component = owner.getKind() == Tree.Kind.RECORD
                && !field.getModifiers().getFlags().contains(Modifier.STATIC);
        if (component || isPublic(field.getModifiers(), getCurrentPath().getParentPath())) {
            String kind = component ? "record component" : "field";
            note(field, kind, field.getName().toString(), field.getType(), typeDoc);
        }
        return null;
    }

    private void note(Tree member, String kind, String name, Tree type, String typeDoc) {
        if (type == null || !type.toString().equals("double")) return;
        ClassTree owner = (ClassTree) getCurrentPath().getParentPath().getLeaf();
        long line = unit.getLineMap().getLineNumber(docs.getSourcePositions().getStartPosition(unit, member));
        String where = unit.getSourceFile().getName() + ":" + line;
        found.add(new PublicDouble(
                where, kind + " " + name + " of " + owner.getSimpleName(), name, doc(getCurrentPath()), typeDoc));
    }

    private String doc(TreePath path) {
        String text = docs.getDocComment(path);
        return text == null ? "" : text;
    }

    private static boolean isPublic(ModifiersTree modifiers, TreePath parent) {
        boolean inInterface = parent.getLeaf().getKind() == Tree.Kind.INTERFACE
                && !modifiers.getFlags().contains(Modifier.PRIVATE);
        return inInterface || modifiers.getFlags().contains(Modifier.PUBLIC);
    }
}
