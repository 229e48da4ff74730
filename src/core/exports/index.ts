export * from './sheet';
export * from './sheet-svg';
export * from './gltf';
