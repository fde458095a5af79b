/** As much of three.js as the scene uses; its own types are a package of their own. */
export class Vector2 { constructor(x?: number, y?: number); x: number; y: number }
export class Vector3 {
    constructor(x?: number, y?: number, z?: number);
    x: number;
    y: number;
    z: number;
    [axis: string]: any;
    set(x: number, y: number, z: number): this;
    setX(x: number): this;
    setY(y: number): this;
    setZ(z: number): this;
    copy(from: Vector3): this;
    clone(): Vector3;
    add(other: Vector3): this;
    sub(other: Vector3): this;
    addScaledVector(other: Vector3, scale: number): this;
    multiplyScalar(scale: number): this;
    lerp(to: Vector3, share: number): this;
    lerpVectors(from: Vector3, to: Vector3, share: number): this;
    cross(other: Vector3): this;
    dot(other: Vector3): number;
    length(): number;
    lengthSq(): number;
    setLength(length: number): this;
    normalize(): this;
    distanceTo(other: Vector3): number;
    applyMatrix3(matrix: Matrix3): this;
    applyMatrix4(matrix: Matrix4): this;
    applyQuaternion(turn: Quaternion): this;
    project(camera: Camera): this;
    setFromSpherical(place: Spherical): this;
    setFromMatrixColumn(matrix: Matrix4, column: number): this;
    setFromColor(colour: Color): this;
    toArray(): [number, number, number];
}
export class Vector4 { constructor(x?: number, y?: number, z?: number, w?: number); x: number; y: number; z: number; w: number; set(x: number, y: number, z: number, w: number): this }
export class Matrix3 { getNormalMatrix(matrix: Matrix4): this }
export class Matrix4 {
    elements: number[];
    copy(from: Matrix4): this;
    multiply(other: Matrix4): this;
    scale(by: Vector3): this;
    setPosition(at: Vector3): this;
    setPosition(x: number, y: number, z: number): this;
    makeTranslation(x: number, y: number, z: number): this;
    makeScale(x: number, y: number, z: number): this;
    makeRotationX(angle: number): this;
    makeRotationY(angle: number): this;
    makeRotationZ(angle: number): this;
}
export class Quaternion { setFromAxisAngle(axis: Vector3, angle: number): this; copy(from: Quaternion): this }
export class Euler { x: number; y: number; z: number }
export class Color {
    constructor(r?: number, g?: number, b?: number);
    r: number;
    g: number;
    b: number;
    setRGB(r: number, g: number, b: number, space?: string): this;
    setStyle(style: string, space?: string): this;
    lerp(to: Color, share: number): this;
}
export class Spherical { phi: number; theta: number; setFromVector3(from: Vector3): this }
export class Box3 {
    constructor(min?: Vector3, max?: Vector3);
    min: Vector3;
    max: Vector3;
    getCenter(into: Vector3): Vector3;
    getSize(into: Vector3): Vector3;
    setFromObject(object: Object3D): this;
}
export class Sphere { center: Vector3; radius: number }
export class Plane { setFromNormalAndCoplanarPoint(normal: Vector3, point: Vector3): this }
export class Ray { intersectPlane(plane: Plane, into: Vector3): Vector3 | null }
export class Raycaster {
    ray: Ray;
    setFromCamera(place: Vector2, camera: Camera): void;
    intersectObjects(objects: Object3D[], deep?: boolean): { object: Object3D; point: Vector3; distance: number }[];
}
export class Object3D {
    visible: boolean;
    parent: Object3D | null;
    position: Vector3;
    rotation: Euler;
    quaternion: Quaternion;
    scale: Vector3 & { setScalar(value: number): void };
    matrix: Matrix4;
    matrixWorld: Matrix4;
    frustumCulled: boolean;
    userData: Record<string, any>;
    add(...objects: Object3D[]): this;
    removeFromParent(): this;
    traverse(visit: (object: Object3D) => void): void;
    raycast(...rest: any[]): void;
    lookAt(point: Vector3): void;
    updateMatrixWorld(): void;
    updateWorldMatrix(parents: boolean, children: boolean): void;
    localToWorld(point: Vector3): Vector3;
    worldToLocal(point: Vector3): Vector3;
}
export class Group extends Object3D { private readonly isGroup: true }
export class Scene extends Object3D { background: Color | null }
export class Camera extends Object3D { private readonly isCamera: true }
export class PerspectiveCamera extends Camera {
    constructor(fov: number, aspect: number, near: number, far: number);
    fov: number;
    aspect: number;
    updateProjectionMatrix(): void;
}
export class BufferAttribute {
    constructor(array: ArrayLike<number>, size: number);
    needsUpdate: boolean;
    getX(index: number): number;
    getY(index: number): number;
    getZ(index: number): number;
    setX(index: number, x: number): this;
    setXYZ(index: number, x: number, y: number, z: number): this;
    setUsage(usage: number): this;
}
export class Float32BufferAttribute extends BufferAttribute {}
export class InstancedBufferAttribute extends BufferAttribute {}
export const DynamicDrawUsage: number;
export class BufferGeometry {
    boundingSphere: Sphere | null;
    setIndex(index: number[]): this;
    setAttribute(name: string, attribute: BufferAttribute): this;
    getAttribute(name: string): BufferAttribute;
    computeBoundingSphere(): void;
    dispose(): void;
}
export class Material {
    visible: boolean;
    transparent: boolean;
    depthWrite: boolean;
    needsUpdate: boolean;
    side: number;
    userData: Record<string, any>;
    dispose(): void;
}
export const FrontSide: number;
export const DoubleSide: number;
export class ShaderMaterial extends Material {
    constructor(of: Record<string, any>);
    defines: Record<string, string>;
    uniforms: Record<string, { value: any }>;
}
export class Mesh<M extends Material | Material[] = Material> extends Object3D {
    constructor(geometry?: BufferGeometry, material?: M);
    geometry: BufferGeometry;
    material: M;
}
export class LineSegments extends Object3D { constructor(geometry: BufferGeometry, material: Material); geometry: BufferGeometry; material: Material }
export class InstancedMesh extends Mesh {
    constructor(geometry: BufferGeometry, material: Material, count: number);
    count: number;
    instanceMatrix: InstancedBufferAttribute;
    instanceColor: InstancedBufferAttribute | null;
    setMatrixAt(index: number, matrix: Matrix4): void;
    getMatrixAt(index: number, into: Matrix4): void;
    dispose(): void;
}
export const ShapeUtils: { triangulateShape(outline: Vector2[], holes: Vector2[][]): number[][] };
export const LinearSRGBColorSpace: string;
export class WebGLRenderer {
    constructor(of: Record<string, any>);
    outputColorSpace: string;
    info: { autoReset: boolean; reset(): void; render: { triangles: number; calls: number; lines: number } };
    extensions: { has(name: string): boolean };
    setPixelRatio(ratio: number): void;
    getPixelRatio(): number;
    setSize(width: number, height: number, style?: boolean): void;
    setScissorTest(on: boolean): void;
    setScissor(x: number, y: number, width: number, height: number): void;
    setViewport(x: number, y: number, width: number, height: number): void;
    render(scene: Scene, camera: Camera): void;
    dispose(): void;
}
