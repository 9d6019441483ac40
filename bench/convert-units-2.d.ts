// convert-units 2 brings no types.
declare module 'convert-units-2' {
  function convert(value: number): {
    from(unit: string): { to(unit: string): number };
  };
  export = convert;
}
