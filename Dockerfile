# One image for API and web: the same build that `npm start` makes, without the embedded database.
FROM node:20-bookworm-slim AS build
WORKDIR /espalier
COPY . .
RUN npm ci && npm run build

FROM node:20-bookworm-slim
ENV NODE_ENV=production
WORKDIR /espalier
COPY --from=build --chown=node:node /espalier /espalier
USER node
CMD ["node", "apps/api/dist/main.js"]
