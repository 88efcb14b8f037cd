import prettier from "eslint-config-prettier";
import officeAddins from "eslint-plugin-office-addins";
import tseslint from "typescript-eslint";

export default tseslint.config(
  { ignores: ["node_modules/", "dist/", ".cache/", "assets/"] },
  ...tseslint.configs.recommended,
  {
    files: ["src/hosts/excel/**/*.ts"],
    plugins: { "office-addins": officeAddins },
    languageOptions: { parserOptions: { project: true } },
    rules: Object.fromEntries(Object.keys(officeAddins.rules).map((rule) => [`office-addins/${rule}`, "error"])),
  },
  {
    rules: {
      "no-restricted-syntax": ["error", "TSEnumDeclaration", "Decorator"],
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_" }],
      // noUncheckedIndexedAccess makes every index maybe undefined; where a loop bounds it, ! says so.
      "@typescript-eslint/no-non-null-assertion": "off",
      eqeqeq: "error",
    },
  },
  prettier,
);
