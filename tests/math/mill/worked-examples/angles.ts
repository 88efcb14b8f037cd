export const degreesOf = (radians: number) => (radians * 180) / Math.PI;
export const radiansOf = (degrees: number) => (degrees * Math.PI) / 180;
